/** The bore of a hub with keyways for parallel keys, cut at the middle of its tolerances; with an outside diameter the whole ring. */
import { contour } from '../../geometry/contour.ts';
import { circle, point } from '../../geometry/segment.ts';
import { fixed, mm, term } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { standBack } from '../common-keys.ts';
import { shapeKind } from '../kind.ts';
import { refusedWith } from '../refused.ts';
import type { MadeShape, Outline } from '../shape.ts';
import { find } from './findings.ts';
import { type HubRequest, keywayHubQuestion } from './hub-request.ts';
import { type Key, keyOf, type Limits, limitsOf, middle } from './key.ts';
import { boreWith, type KeywayForm, reachOf, roomFor } from './keyway-contour.ts';
import { cornerDoubt, keywaySizes } from './keyway-sizes.ts';
import { cornerWithoutRoom } from './wheel-bore.ts';

const words = phrases('keyway-hub', {
  name: (shaft: number, standard: string, key: Text) =>
    say`Hub for a shaft of ${{ shaft: mm(shaft) }}, ${{ standard: term(standard) }}, ${{ key }}`,
});

export const keywayHub = shapeKind({
  ...keywayHubQuestion,
  make: (request) => {
    const key = keyOf({ ...request, field: 'shaft', flatKey: request.flatKey });
    return key.kind === 'refused' ? key : drawn(request, key, limitsOf(request.boreZone, request.shaft));
  },
});

const drawn = (request: HubRequest, key: Key, bore: Limits): MadeShape => {
  const back = standBack(request);
  const across: Limits = { low: key.across.value, high: key.across.value + key.larger };
  const form: KeywayForm = {
    radius: middle(bore) / 2 + back,
    half: middle(key.width) / 2 + back,
    top: middle(across) - middle(bore) / 2 + back,
    corner: Math.max(0, request.cornerRadius ?? key.corner[1]),
  };
  if (!roomFor(form)) return impossible('cornerRadius', cornerWithoutRoom(form.corner));
  if (request.outside !== undefined && request.outside / 2 <= reachOf(form))
    return impossible(
      'outside',
      say(
        'keyway-impossible/outside',
      )`An outside diameter of ${{ outside: mm(request.outside) }} leaves no metal above the keyway, which reaches ${{ reach: mm(reachOf(form), fixed(3)) }} from the middle.`,
    );
  const spans = request.keyways === 1 ? [0] : [0, (request.between * Math.PI) / 180];
  const outlines: readonly Outline[] = [
    ...(request.outside === undefined
      ? []
      : [{ contour: contour([circle(point(0, 0), request.outside / 2)]), metal: 'inside', layer: 'hub' } as const]),
    { contour: boreWith(form, spans), metal: 'outside' },
  ];
  return {
    kind: 'made',
    shape: {
      name: words.name(request.shaft, request.standard, key.words),
      outlines,
      starts: [],
      sizes: keywaySizes(key, { bore, across, cornerRadius: request.cornerRadius }, form),
      fitDeviation: 0,
      insideRadius: form.corner,
      findings: [...key.findings, ...cornerDoubt(form.corner, key, 'cornerRadius')],
    },
  };
};

const impossible = (path: string, text: Text): MadeShape =>
  refusedWith(find('keyway-impossible', text, { place: { kind: 'field', path } }));
