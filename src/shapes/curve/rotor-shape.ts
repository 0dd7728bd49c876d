/** The rotor with its bore and holes: the disc of a drive, the inner rotor of a pump. Lengths in mm. */

import { type Contour, contour } from '../../geometry/contour.ts';
import { distanceTo } from '../../geometry/near/distance.ts';
import { circle, distanceBetween, type Point, point } from '../../geometry/segment.ts';
import { type Finding, remedy } from '../../text/finding.ts';
import { count, mm, type Part, upTo } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { standBack } from '../common-keys.ts';
import { insideRadiusOf } from '../inside-radius.ts';
import { refusedWith } from '../refused.ts';
import type { MadeShape, Outline } from '../shape.ts';
import { find } from './findings.ts';
import { lobed } from './lobes.ts';
import { halfLobe, type PinRing } from './pin-ring.ts';
import type { Holes, RotorRequest, Wall } from './rotor-request.ts';
import { rotorSizes } from './rotor-sizes.ts';

/** Common practice, no source: less than this between two openings bends, or breaks out, under a press fit. */
const THIN = 1;

const tidy = (value: number): Part => mm(value, upTo(3));
const at = (path: keyof RotorRequest) => ({ place: { kind: 'field', path } }) as const;

export const rotorShape = (request: RotorRequest, ring: PinRing): MadeShape => {
  const back = standBack(request);
  const reach = request.pinDiameter / 2 + back;
  const valley = ring.radius - ring.eccentricity - reach;
  if (valley <= 0)
    return refusedWith(
      find(
        'rotor-impossible/valleys',
        say`The valleys of the rotor would lie ${{ beyond: tidy(-valley) }} beyond its middle.`,
        at('pinDiameter'),
      ),
    );
  const lobes = ring.pins - 1;
  const made = lobed(halfLobe(ring, reach), lobes, request.fit);
  if (made.kind === 'not fitted')
    return refusedWith(find('rotor-impossible/arcs', say`The wall of the rotor cannot be drawn with arcs.`, at('pinDiameter')));
  const holes = holesOf(request, back);
  if ('finding' in holes) return refusedWith(holes.finding);
  const walls = wallsOf(request, made.contour, holes, valley);
  if (walls.fault !== undefined) return refusedWith(walls.fault);
  const outlines: readonly Outline[] = [
    { contour: made.contour, metal: 'inside' },
    ...(request.bore === undefined ? [] : [opening(point(0, 0), request.bore, 'bore')]),
    ...holes.centres.map((centre) => opening(centre, holes.diameter, 'output holes')),
  ];
  const inside = insideRadiusOf(outlines);
  return {
    kind: 'made',
    shape: {
      name: (request.part === 'disc' ? words.disc : words.rotor)(request, ring.pins),
      outlines,
      starts: [],
      sizes: rotorSizes(request, ring, { back, reach, inside, holes, wall: walls.least }),
      fitDeviation: made.deviation,
      insideRadius: inside,
      findings: walls.findings,
    },
  };
};

const words = phrases('rotor', {
  disc: ({ pinCircle, eccentricity }: RotorRequest, pins: number) =>
    say`Cycloid disc, ${{ lobes: count(pins - 1, 'lobe') }} on ${{ pins: count(pins, 'pin') }}, ${{ circle: tidy(pinCircle) }} circle, ${{ eccentricity: tidy(eccentricity) }} eccentric`,
  rotor: ({ pinCircle, eccentricity }: RotorRequest, teeth: number) =>
    say`Inner rotor of a gerotor, ${{ lobes: count(teeth - 1, 'lobe') }} on ${{ teeth: count(teeth, 'tooth') }}, ${{ circle: tidy(pinCircle) }} circle, ${{ eccentricity: tidy(eccentricity) }} eccentric`,
});

const opening = (centre: Point, diameter: number, layer: string): Outline => ({
  contour: contour([circle(centre, diameter / 2)]),
  metal: 'outside',
  layer,
});

/** A hole lets its pin go round by the eccentricity and have its share of the play. */
const holesOf = (request: RotorRequest, back: number): Holes | { readonly finding: Finding } => {
  const { part, outputPins: pins, outputCircle, outputPin } = request;
  if (part !== 'disc' || pins === 0) return { centres: [], diameter: 0 };
  if (outputCircle === undefined || outputPin === undefined)
    return {
      finding: find(
        'rotor-impossible',
        outputCircle === undefined
          ? say('rotor-impossible/output-circle')`${{ pins: count(pins) }} output pins need the circle they stand on.`
          : say('rotor-impossible/output-pin')`${{ pins: count(pins) }} output pins need the diameter they have.`,
        at(outputCircle === undefined ? 'outputCircle' : 'outputPin'),
      ),
    };
  const diameter = outputPin + 2 * request.eccentricity + 2 * back;
  if (diameter <= 0) return { finding: find('rotor-impossible/hole-play', say`The play is more than a hole is wide.`, at('clearance')) };
  const turn = (i: number): number => (2 * Math.PI * i) / pins;
  return {
    centres: Array.from({ length: pins }, (_, i) => point((outputCircle / 2) * Math.cos(turn(i)), (outputCircle / 2) * Math.sin(turn(i)))),
    diameter,
  };
};

interface Walls {
  readonly fault?: Finding;
  readonly findings: readonly Finding[];
  /** The thinnest metal between two openings, or an opening and the lobes. */
  readonly least?: Wall;
}

const between = phrases('rotor-wall', {
  boreAndValleys: say`bore and valleys`,
  holesAndValleys: say`output holes and valleys`,
  boreAndHoles: say`bore and output holes`,
  twoHoles: say`two output holes`,
});

const overlap = (wall: Wall, hole: number): Text => {
  const [{ between: openings }, by] = [wall, tidy(-wall.thickness)];
  return hole > 0 && wall.path !== 'bore'
    ? say(
        'rotor-impossible/overlap-of-holes',
      )`There is no metal left between ${{ openings }}: they overlap by ${{ by }}; a hole has to be ${{ hole: tidy(hole) }} wide.`
    : say('rotor-impossible/overlap')`There is no metal left between ${{ openings }}: they overlap by ${{ by }}.`;
};

const wallsOf = (request: RotorRequest, rim: Contour, { centres, diameter }: Holes, valley: number): Walls => {
  const walls: Wall[] = [];
  const { bore, outputCircle = 0 } = request;
  if (bore !== undefined) walls.push({ thickness: valley - bore / 2, between: between.boreAndValleys, path: 'bore' });
  if (centres.length > 0) {
    const out = Math.min(...centres.map((c) => distanceTo(rim, c))) - diameter / 2;
    const beyond = outputCircle / 2 >= valley ? valley - outputCircle / 2 - diameter / 2 : out;
    walls.push({ thickness: Math.min(out, beyond), between: between.holesAndValleys, path: 'outputCircle' });
    if (bore !== undefined)
      walls.push({ thickness: outputCircle / 2 - diameter / 2 - bore / 2, between: between.boreAndHoles, path: 'outputCircle' });
  }
  if (centres.length > 1)
    walls.push({
      thickness: distanceBetween(centres[0] as Point, centres[1] as Point) - diameter,
      between: between.twoHoles,
      path: 'outputPins',
    });
  const least = walls.toSorted((a, b) => a.thickness - b.thickness)[0];
  if (least === undefined) return { findings: [] };
  if (least.thickness <= 0)
    return {
      findings: [],
      fault: find('rotor-impossible', overlap(least, diameter), at(least.path)),
    };
  const findings =
    least.thickness < THIN
      ? [
          find('rotor-wall-thin', say`Only ${{ wall: tidy(least.thickness) }} of metal is left between ${{ between: least.between }}.`, {
            ...at(least.path),
            remedy: remedy(say`${{ wall: tidy(THIN) }} or more, or stock without stress and several passes.`, { field: least.path }),
          }),
        ]
      : [];
  return { findings, least };
};
