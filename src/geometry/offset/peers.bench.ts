/** The libraries that the offset is measured against, each made ready beforehand so that only the offset itself is timed. */
import arcLibrary from '@crhio/offset';
import loadWasm from 'clipper2-wasm';
import { areaOf } from '../area.ts';
import { bulgeOf } from '../bulge.ts';
import type { Contour } from '../contour.ts';
import { polyline } from '../example-shapes.fixture.ts';
import { areaOfPolygons, NANO, offsetByLibrary, polygonOf } from './second-library.fixture.ts';

/** One way to offset a shape: `run` does it, and gives the means to measure the area in mm² afterwards. */
export interface Peer {
  readonly name: string;
  readonly atLeast: number;
  /** mm, positive inwards, for a counter-clockwise shape. */
  readonly run: (distance: number) => () => number;
}

/** mm: how far chords may lie off the arcs for the libraries that know only polygons. */
export const CHORD_ERROR = 1e-4;

export const peersOf = async (shape: Contour): Promise<readonly Peer[]> => [inTypeScript(shape), await inWasm(shape), withArcs(shape)];

let loading: ReturnType<typeof loadWasm> | undefined;

const inTypeScript = (shape: Contour): Peer => {
  const polygon = polygonOf(shape, CHORD_ERROR);
  const run = (distance: number) => {
    const result = offsetByLibrary([polygon], -distance, CHORD_ERROR);
    return () => areaOfPolygons(result);
  };
  return { name: 'clipper2-ts', atLeast: 20, run };
};

/** The second library once more, compiled: the same answers, far faster, which counts where thousands of shapes are confirmed. */
export const inWasm = async (shape: Contour): Promise<Peer> => {
  loading ??= loadWasm();
  const engine = await loading;
  const path = engine.MakePath64(polygonOf(shape, CHORD_ERROR).flatMap((p) => [BigInt(p.x), BigInt(p.y)]));
  const paths = new engine.Paths64();
  paths.push_back(path);
  path.delete();
  const { Round } = engine.JoinType;
  const { Polygon } = engine.EndType;
  const run = (distance: number) => {
    const result = engine.InflatePaths64(paths, -distance * NANO, Round, Polygon, 2, CHORD_ERROR * NANO);
    const area = engine.AreaPaths64(result) / NANO / NANO;
    result.delete();
    return () => area;
  };
  return { name: 'clipper2-wasm', atLeast: 5, run };
};

const withArcs = (shape: Contour): Peer => {
  const vertexes = shape.segments.map((s) => ({ x: s.from.x, y: s.from.y, bulge: bulgeOf(s) }));
  const run = (distance: number) => {
    const result = arcLibrary.default({ vertexes, isClosed: true }, distance, false);
    return () => result.reduce((sum, p) => sum + areaOf(polyline(p.vertexes)), 0);
  };
  return { name: '@crhio/offset', atLeast: 5, run };
};
