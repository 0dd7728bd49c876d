/** What we use of @crhio/offset, which has no types. */
declare module '@crhio/offset' {
  interface Vertex {
    readonly x: number;
    readonly y: number;
    readonly bulge: number;
  }
  interface Polyline {
    readonly vertexes: readonly Vertex[];
    readonly isClosed: boolean;
  }
  /** The package is in the older module form, so that its default export comes as a field. */
  const packed: { readonly default: (polyline: Polyline, delta: number, sharpCorners: boolean) => readonly Polyline[] };
  export default packed;
}
