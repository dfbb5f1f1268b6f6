// Bandwright. SPDX-License-Identifier: Apache-2.0
// Reads a 3MF file with lib3mf and says what it found, a line each: warnings; metadata; for every mesh object its name,
// whether lib3mf calls it manifold and oriented, its volume in mm3, its metal; how many items are built.

#include "Model/COM/NMR_DLLInterfaces.h"

#include <cstdio>
#include <string>

using namespace NMR;

static void check(HRESULT result, const char* what) {
    if (result != LIB3MF_OK) {
        std::printf("failed %s %lx\n", what, (unsigned long) result);
        std::exit(1);
    }
}

int main(int count, char** arguments) {
    if (count != 2) {
        return 2;
    }
    PLib3MFModel* model;
    check(lib3mf_createmodel(&model), "model");
    PLib3MFModelReader* reader;
    check(lib3mf_model_queryreader(model, "3mf", &reader), "reader");
    check(lib3mf_reader_setstrictmodeactive(reader, 1), "strict");
    check(lib3mf_reader_readfromfileutf8(reader, arguments[1]), "reading");
    DWORD warnings;
    check(lib3mf_reader_getwarningcount(reader, &warnings), "warnings");
    std::printf("warnings %u\n", (unsigned) warnings);
    for (DWORD i = 0; i < warnings; i++) {
        DWORD code;
        char text[512] = "";
        ULONG needed;
        lib3mf_reader_getwarningutf8(reader, i, &code, text, sizeof text, &needed);
        std::printf("warning %x %s\n", (unsigned) code, text);
    }
    DWORD entries;
    check(lib3mf_model_getmetadatacount(model, &entries), "metadata");
    for (DWORD i = 0; i < entries; i++) {
        char key[256] = "";
        char value[2048] = "";
        ULONG needed;
        lib3mf_model_getmetadatakeyutf8(model, i, key, sizeof key, &needed);
        lib3mf_model_getmetadatavalueutf8(model, i, value, sizeof value, &needed);
        std::printf("metadata %s=%s\n", key, value);
    }
    PLib3MFModelResourceIterator* objects;
    check(lib3mf_model_getmeshobjects(model, &objects), "objects");
    for (BOOL more; lib3mf_resourceiterator_movenext(objects, &more) == LIB3MF_OK && more;) {
        PLib3MFModelResource* object;
        check(lib3mf_resourceiterator_getcurrent(objects, &object), "object");
        char name[256] = "";
        ULONG needed;
        check(lib3mf_object_getnameutf8(object, name, sizeof name, &needed), "name");
        BOOL manifold;
        BOOL valid;
        check(lib3mf_meshobject_ismanifoldandoriented(object, &manifold), "manifold");
        check(lib3mf_object_isvalidobject(object, &valid), "valid");
        DWORD triangles;
        check(lib3mf_meshobject_gettrianglecount(object, &triangles), "triangles");
        double volume = 0;
        for (DWORD t = 0; t < triangles; t++) {
            MODELMESHTRIANGLE corners;
            MODELMESHVERTEX p[3];
            check(lib3mf_meshobject_gettriangle(object, t, &corners), "triangle");
            for (int k = 0; k < 3; k++) {
                check(lib3mf_meshobject_getvertex(object, corners.m_nIndices[k], &p[k]), "vertex");
            }
            const float* a = p[0].m_fPosition;
            const float* b = p[1].m_fPosition;
            const float* c = p[2].m_fPosition;
            volume += (double) a[0] * ((double) b[1] * c[2] - (double) b[2] * c[1])
                    + (double) a[1] * ((double) b[2] * c[0] - (double) b[0] * c[2])
                    + (double) a[2] * ((double) b[0] * c[1] - (double) b[1] * c[0]);
        }
        std::string metal = "none";
        PLib3MFDefaultPropertyHandler* properties;
        DWORD group;
        DWORD index;
        if (lib3mf_object_createdefaultpropertyhandler(object, &properties) == LIB3MF_OK
                && lib3mf_defaultpropertyhandler_getbasematerial(properties, &group, &index) == LIB3MF_OK) {
            PLib3MFModelBaseMaterial* materials;
            char word[256] = "";
            check(lib3mf_model_getbasematerialbyid(model, group, &materials), "materials");
            check(lib3mf_basematerial_getnameutf8(materials, index, word, sizeof word, &needed), "material");
            metal = word;
        }
        std::printf("object %s manifold=%d valid=%d triangles=%u volume=%.6f metal=%s\n",
                name, manifold, valid, (unsigned) triangles, volume / 6, metal.c_str());
    }
    PLib3MFModelBuildItemIterator* items;
    check(lib3mf_model_getbuilditems(model, &items), "items");
    int built = 0;
    for (BOOL more; lib3mf_builditemiterator_movenext(items, &more) == LIB3MF_OK && more;) {
        built++;
    }
    std::printf("items %d\n", built);
    return 0;
}
