// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.operation;

/**
 * The elementary questions of a boolean between two meshes, P and Q, after J. M. Smith and N. A. Dodgson, "A topologically
 * robust algorithm for Boolean operations on polyhedral shapes using approximate arithmetic" (2007).
 *
 * <p>Each question is answered from questions of one dimension less, down to "is this number smaller than that": first
 * along x (a vertex casts a shadow on an edge), then along y (an edge on an edge), then along z (a vertex on a face). The
 * answers are small whole numbers; sums of them over the boundary of a face or an edge cancel exactly, whatever rounding
 * did to the coordinates, because each number is compared once and always answered alike. That is why the result closes.
 *
 * <p>Equal coordinates are told apart by imagining P displaced infinitesimally along its vertex directions: outwards in a
 * union, inwards otherwise. So faces of P and Q that coincide merge in a union and leave no skin in a difference.
 *
 * <p>Names: {@code 0} is a vertex, {@code 1} an edge (given by its forward half-edge), {@code 2} a face; the first digit is
 * P's. A method returns the answer and leaves the place in fields. One object serves one thread.
 */
final class Shadows {
    private final BooleanOperand p;
    private final BooleanOperand q;
    private final double outwards;

    /** Place of the last {@link #vertexEdge}, {@link #edgeVertex}: y and z on the edge. NaN if there is none. */
    private double edgeY;

    private double edgeZ;

    /** Place of the last {@link #edgeEdge}: x, y, z on P's edge and z on Q's. NaN if there is none. */
    private double crossX;

    private double crossY;
    private double crossZP;
    private double crossZQ;

    /** Place of the last {@link #vertexFace}, {@link #faceVertex}: z on the face. NaN if there is none. */
    private double faceZ;

    /** Place of the last {@link #edgeFace}, {@link #faceEdge}. */
    double hitX;

    double hitY;
    double hitZ;

    /** The two ends between which a place is found, each as a pair of points that share one or two coordinates. */
    private final Bracket bracket11 = new Bracket();

    private final Bracket bracket02 = new Bracket();
    private final Bracket bracket12 = new Bracket();

    Shadows(BooleanOperand p, BooleanOperand q, boolean union) {
        this.p = p;
        this.q = q;
        this.outwards = union ? 1 : -1;
    }

    /** Whether P's number is below Q's, P displaced in the given direction where they are equal. */
    private boolean below(double numberOfP, double numberOfQ, double direction) {
        return numberOfP == numberOfQ ? outwards * direction < 0 : numberOfP < numberOfQ;
    }

    private int count(double numberOfP, double numberOfQ, double direction) {
        return below(numberOfP, numberOfQ, direction) ? 1 : 0;
    }

    /** Sets {@link #edgeY} and {@link #edgeZ} to the place on an edge at a given x, worked out from its nearer end. */
    private void onEdge(BooleanOperand body, int start, int end, double x) {
        double fromStart = x - body.x(start);
        double fromEnd = x - body.x(end);
        double dx = body.x(end) - body.x(start);
        boolean startNearer = Math.abs(fromStart) < Math.abs(fromEnd);
        double share = (startNearer ? fromStart : fromEnd) / dx;
        if (Double.isInfinite(share) || Double.isNaN(share)) {
            edgeY = body.y(start);
            edgeZ = body.z(start);
            return;
        }
        int base = startNearer ? start : end;
        edgeY = body.y(base) + share * (body.y(end) - body.y(start));
        edgeZ = body.z(base) + share * (body.z(end) - body.z(start));
    }

    private int vertexEdge(int vertexOfP, int edgeOfQ) {
        int start = q.edges.start(edgeOfQ);
        int end = q.edges.end(edgeOfQ);
        double x = p.x(vertexOfP);
        double direction = p.normals[3 * vertexOfP];
        int shadow = count(x, q.x(end), direction) - count(x, q.x(start), direction);
        edgeY = Double.NaN;
        if (shadow != 0) {
            onEdge(q, start, end, x);
            if (!below(p.y(vertexOfP), edgeY, p.normals[3 * vertexOfP + 1])) {
                shadow = 0;
            }
        }
        return shadow;
    }

    private int edgeVertex(int edgeOfP, int vertexOfQ) {
        int start = p.edges.start(edgeOfP);
        int end = p.edges.end(edgeOfP);
        double x = q.x(vertexOfQ);
        int shadow = count(p.x(start), x, p.normals[3 * start]) - count(p.x(end), x, p.normals[3 * end]);
        edgeY = Double.NaN;
        if (shadow != 0) {
            onEdge(p, start, end, x);
            int nearer = nearer(p, start, end, x, q.y(vertexOfQ), q.z(vertexOfQ));
            if (!below(edgeY, q.y(vertexOfQ), p.normals[3 * nearer + 1])) {
                shadow = 0;
            }
        }
        return shadow;
    }

    private static int nearer(BooleanOperand body, int a, int b, double x, double y, double z) {
        return squaredDistance(body, a, x, y, z) < squaredDistance(body, b, x, y, z) ? a : b;
    }

    private static double squaredDistance(BooleanOperand body, int vertex, double x, double y, double z) {
        double dx = body.x(vertex) - x;
        double dy = body.y(vertex) - y;
        double dz = body.z(vertex) - z;
        return dx * dx + dy * dy + dz * dz;
    }

    private int edgeEdge(int edgeOfP, int edgeOfQ) {
        int answer = 0;
        bracket11.clear();
        for (int i = 0; i < 2; i++) {
            int vertex = i == 0 ? p.edges.start(edgeOfP) : p.edges.end(edgeOfP);
            int shadow = vertexEdge(vertex, edgeOfQ);
            if (!Double.isNaN(edgeY)) {
                answer += i == 0 ? -shadow : shadow;
                bracket11.offer(shadow != 0, p.x(vertex), p.y(vertex), p.z(vertex), edgeY, edgeZ);
            }
        }
        for (int i = 0; i < 2; i++) {
            int vertex = i == 0 ? q.edges.start(edgeOfQ) : q.edges.end(edgeOfQ);
            int shadow = edgeVertex(edgeOfP, vertex);
            if (!Double.isNaN(edgeY)) {
                answer += i == 0 ? -shadow : shadow;
                bracket11.offer(shadow != 0, q.x(vertex), edgeY, edgeZ, q.y(vertex), q.z(vertex));
            }
        }
        crossX = Double.NaN;
        if (answer != 0) {
            bracket11.solve();
            crossX = bracket11.x;
            crossY = bracket11.y;
            crossZP = bracket11.zP;
            crossZQ = bracket11.zQ;
            int nearer = nearer(p, p.edges.start(edgeOfP), p.edges.end(edgeOfP), crossX, crossY, crossZP);
            if (!below(crossZP, crossZQ, p.normals[3 * nearer + 2])) {
                answer = 0;
            }
        }
        return answer;
    }

    /** Whether, and how often, a vertex of P lies below a face of Q. */
    int vertexFace(int vertexOfP, int faceOfQ) {
        int answer = 0;
        bracket02.clear();
        for (int h = 3 * faceOfQ; h < 3 * faceOfQ + 3; h++) {
            int shadow = vertexEdge(vertexOfP, q.edges.edge(h));
            if (!Double.isNaN(edgeY)) {
                answer += q.edges.isEdge(h) ? -shadow : shadow;
                bracket02.offer(shadow != 0, edgeY, edgeZ, 0, edgeZ, 0);
            }
        }
        faceZ = Double.NaN;
        if (answer != 0) {
            faceZ = bracket02.at(p.y(vertexOfP));
            if (!below(p.z(vertexOfP), faceZ, p.normals[3 * vertexOfP + 2])) {
                answer = 0;
            }
        }
        return answer;
    }

    /** Whether, and how often, a face of P lies below a vertex of Q. */
    int faceVertex(int faceOfP, int vertexOfQ) {
        int answer = 0;
        bracket02.clear();
        int closest = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int h = 3 * faceOfP; h < 3 * faceOfP + 3; h++) {
            int corner = p.edges.start(h);
            double distance = squaredDistance(p, corner, q.x(vertexOfQ), q.y(vertexOfQ), q.z(vertexOfQ));
            if (distance < least) {
                least = distance;
                closest = corner;
            }
            int shadow = edgeVertex(p.edges.edge(h), vertexOfQ);
            if (!Double.isNaN(edgeY)) {
                answer += p.edges.isEdge(h) ? shadow : -shadow;
                bracket02.offer(shadow != 0, edgeY, edgeZ, 0, edgeZ, 0);
            }
        }
        faceZ = Double.NaN;
        if (answer != 0) {
            faceZ = bracket02.at(q.y(vertexOfQ));
            if (!below(faceZ, q.z(vertexOfQ), p.normals[3 * closest + 2])) {
                answer = 0;
            }
        }
        return answer;
    }

    /** How often an edge of P passes through a face of Q, signed; the place is left in the {@code hit} fields. */
    int edgeFace(int edgeOfP, int faceOfQ) {
        int answer = 0;
        bracket12.clear();
        for (int i = 0; i < 2; i++) {
            int vertex = i == 0 ? p.edges.start(edgeOfP) : p.edges.end(edgeOfP);
            int shadow = vertexFace(vertex, faceOfQ);
            if (!Double.isNaN(faceZ)) {
                answer += i == 0 ? shadow : -shadow;
                bracket12.offer(shadow != 0, p.x(vertex), p.z(vertex), p.y(vertex), faceZ, p.y(vertex));
            }
        }
        for (int h = 3 * faceOfQ; h < 3 * faceOfQ + 3; h++) {
            int shadow = edgeEdge(edgeOfP, q.edges.edge(h));
            if (!Double.isNaN(crossX)) {
                answer -= q.edges.isEdge(h) ? shadow : -shadow;
                bracket12.offer(shadow != 0, crossX, crossZP, crossY, crossZQ, crossY);
            }
        }
        if (answer != 0) {
            hit();
        }
        return answer;
    }

    /** How often an edge of Q passes through a face of P, signed; the place is left in the {@code hit} fields. */
    int faceEdge(int faceOfP, int edgeOfQ) {
        int answer = 0;
        bracket12.clear();
        for (int i = 0; i < 2; i++) {
            int vertex = i == 0 ? q.edges.start(edgeOfQ) : q.edges.end(edgeOfQ);
            int shadow = faceVertex(faceOfP, vertex);
            if (!Double.isNaN(faceZ)) {
                answer += i == 0 ? -shadow : shadow;
                bracket12.offer(shadow != 0, q.x(vertex), q.z(vertex), q.y(vertex), faceZ, q.y(vertex));
            }
        }
        for (int h = 3 * faceOfP; h < 3 * faceOfP + 3; h++) {
            int shadow = edgeEdge(p.edges.edge(h), edgeOfQ);
            if (!Double.isNaN(crossX)) {
                answer -= p.edges.isEdge(h) ? shadow : -shadow;
                bracket12.offer(shadow != 0, crossX, crossZQ, crossY, crossZP, crossY);
            }
        }
        if (answer != 0) {
            hit();
        }
        return answer;
    }

    /** The bracket held (x, z, y): turn its crossing back. */
    private void hit() {
        bracket12.solve();
        hitX = bracket12.x;
        hitZ = bracket12.y;
        hitY = bracket12.zP;
    }

    /**
     * Two sections through a pair of curves, one where the answer is "shadowed" and one where it is not: the curves cross
     * between them. Each section holds x, then (y, z) of the first curve and (y, z) of the second.
     */
    private static final class Bracket {
        private final double[][] ends = new double[2][5];
        private int filled;
        private boolean shadowed;

        double x;
        double y;
        double zP;
        double zQ;

        void clear() {
            filled = 0;
        }

        void offer(boolean shadow, double x, double y1, double z1, double y2, double z2) {
            if (filled < 2 && (filled == 0 || shadow != shadowed)) {
                shadowed = shadow;
                double[] end = ends[filled++];
                end[0] = x;
                end[1] = y1;
                end[2] = z1;
                end[3] = y2;
                end[4] = z2;
            }
        }

        /** Linear between the two sections, read as (x, y): the y at a given x, from the nearer section. */
        double at(double x) {
            double[] a = ends[0];
            double[] b = ends[filled - 1];
            double fromA = x - a[0];
            double fromB = x - b[0];
            boolean aNearer = Math.abs(fromA) < Math.abs(fromB);
            double share = (aNearer ? fromA : fromB) / (b[0] - a[0]);
            if (Double.isInfinite(share) || Double.isNaN(share)) {
                return a[1];
            }
            return (aNearer ? a[1] : b[1]) + share * (b[1] - a[1]);
        }

        /** Where the two curves, straight between the sections, have the same y; z of both there. */
        void solve() {
            double[] a = ends[0];
            double[] b = ends[filled - 1];
            double apartA = a[3] - a[1];
            double apartB = b[3] - b[1];
            boolean useA = Math.abs(apartA) < Math.abs(apartB);
            double share = (useA ? apartA : apartB) / (apartA - apartB);
            if (Double.isInfinite(share) || Double.isNaN(share)) {
                share = 0;
            }
            double[] base = useA ? a : b;
            boolean first = Math.abs(b[1] - a[1]) < Math.abs(b[3] - a[3]);
            x = base[0] + share * (b[0] - a[0]);
            y = first ? base[1] + share * (b[1] - a[1]) : base[3] + share * (b[3] - a[3]);
            zP = base[2] + share * (b[2] - a[2]);
            zQ = base[4] + share * (b[4] - a[4]);
        }
    }
}
