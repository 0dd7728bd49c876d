/** What we use of clipper2-wasm, whose own types cannot be found by the compiler. */
declare module 'clipper2-wasm' {
  interface Path64 {
    assign(coordinates: BigInt64Array): void;
    size(): number;
    delete(): void;
  }
  interface Paths64 {
    push_back(path: Path64): void;
    size(): number;
    delete(): void;
  }
  export interface Clipper2 {
    readonly Paths64: new () => Paths64;
    readonly JoinType: { readonly Round: object };
    readonly EndType: { readonly Polygon: object };
    MakePath64(coordinates: readonly bigint[]): Path64;
    InflatePaths64(paths: Paths64, delta: number, join: object, end: object, miterLimit: number, arcTolerance: number): Paths64;
    AreaPaths64(paths: Paths64): number;
  }
  const load: () => Promise<Clipper2>;
  export default load;
}
