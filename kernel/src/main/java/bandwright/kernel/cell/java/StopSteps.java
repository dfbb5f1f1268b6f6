// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.cell.java;

import java.util.HashSet;
import java.util.Set;

import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

import bandwright.design.host.Stop;

/**
 * Puts a step at which a cell can be stopped into a class: where a method is entered and wherever it may jump back. A call without
 * arguments and result changes neither the stack nor its frames, so the class needs no further work.
 */
final class StopSteps {
    private static final String OWNER = Type.getInternalName(Stop.class);

    private StopSteps() {}

    static byte[] into(byte[] classFile) {
        ClassReader reader = new ClassReader(classFile);
        ClassWriter writer = new ClassWriter(reader, 0);
        reader.accept(new EachMethod(writer), 0);
        return writer.toByteArray();
    }

    private static final class EachMethod extends ClassVisitor {
        EachMethod(ClassVisitor next) {
            super(Opcodes.ASM9, next);
        }

        @Override
        public MethodVisitor visitMethod(
                int access, String name, String descriptor, String signature, String[] exceptions) {
            MethodVisitor method = super.visitMethod(access, name, descriptor, signature, exceptions);
            return new Steps(method);
        }
    }

    private static final class Steps extends MethodVisitor {
        private final Set<Label> behind = new HashSet<>();

        Steps(MethodVisitor next) {
            super(Opcodes.ASM9, next);
        }

        private void step() {
            super.visitMethodInsn(Opcodes.INVOKESTATIC, OWNER, "check", "()V", false);
        }

        @Override
        public void visitCode() {
            super.visitCode();
            step();
        }

        @Override
        public void visitLabel(Label label) {
            behind.add(label);
            super.visitLabel(label);
        }

        @Override
        public void visitJumpInsn(int opcode, Label label) {
            if (behind.contains(label)) {
                step();
            }
            super.visitJumpInsn(opcode, label);
        }

        @Override
        public void visitTableSwitchInsn(int min, int max, Label otherwise, Label... labels) {
            stepIfBehind(otherwise, labels);
            super.visitTableSwitchInsn(min, max, otherwise, labels);
        }

        @Override
        public void visitLookupSwitchInsn(Label otherwise, int[] keys, Label[] labels) {
            stepIfBehind(otherwise, labels);
            super.visitLookupSwitchInsn(otherwise, keys, labels);
        }

        private void stepIfBehind(Label otherwise, Label... labels) {
            boolean back = behind.contains(otherwise);
            for (Label label : labels) {
                back |= behind.contains(label);
            }
            if (back) {
                step();
            }
        }
    }
}
