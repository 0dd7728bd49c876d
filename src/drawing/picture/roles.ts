/** What each loop and chain is on the picture, told apart by weight and dash, so that no colour is needed to read it. */
import type { Chain } from '../../geometry/contour.ts';
import { INK, METAL, PAPER, px, QUIET, RUST, text } from '../../picture/svg.ts';
import { count } from '../../text/part.ts';
import { print } from '../../text/print/print.ts';
import type { Reader } from '../../text/reader.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import type { Drawing } from '../drawing.ts';

export type RoleName = 'outline' | 'opening' | 'hidden' | 'left out' | 'open chain';

export interface Role {
  readonly name: RoleName;
  /** SVG attributes of its lines. */
  readonly style: string;
  readonly chains: readonly Chain[];
}

const line = (colour: string, width: number, dash = ''): string =>
  `stroke="${colour}" stroke-width="${width}"${dash === '' ? '' : ` stroke-dasharray="${dash}"`}`;

/** Lower ones first: loops by depth, so that an opening is paper again inside its part. */
export const rolesOf = (drawing: Drawing): readonly Role[] => {
  const visible = drawing.loops.filter((l) => !l.hidden && l.aside === undefined);
  const aside = drawing.loops.filter((l) => !l.hidden && l.aside !== undefined).map((l) => l.contour);
  const deepest = visible.reduce((most, l) => Math.max(most, l.depth), 0);
  const byDepth = Array.from({ length: deepest + 1 }, (_, depth): Role => {
    const chains = visible.filter((l) => l.depth === depth).map((l) => l.contour);
    return depth % 2 === 0
      ? { name: 'outline', style: `fill="${METAL}" ${line(INK, 1.7)}`, chains }
      : { name: 'opening', style: `fill="${PAPER}" ${line(INK, 0.8)}`, chains };
  });
  const hidden: Chain[] = [
    ...drawing.loops.filter((l) => l.hidden).map((l) => l.contour),
    ...drawing.openChains.filter((c) => c.hidden).map((c) => c.path),
  ];
  const all: readonly Role[] = [
    ...byDepth,
    { name: 'left out', style: `fill="none" ${line(QUIET, 1, '6 3')}`, chains: aside },
    { name: 'hidden', style: `fill="none" ${line(QUIET, 1, '1.2 3')}`, chains: hidden },
    {
      name: 'open chain',
      style: `fill="none" ${line(RUST, 1.3, '7 4')}`,
      chains: drawing.openChains.filter((c) => !c.hidden).map((c) => c.path),
    },
  ];
  return all.filter((role) => role.chains.length > 0);
};

/** The key to the lines, each kind once, in one row. */
export const keyOf = (
  roles: readonly Role[],
  marks: boolean,
  y: number,
  { left, right, reader }: { readonly left: number; readonly right: number; readonly reader: Reader },
): { readonly svg: string; readonly bottom: number } => {
  const kinds = roles.filter((role, i) => roles.findIndex((r) => r.name === role.name) === i);
  const entries = kinds.map(({ name, style }) => ({
    name: words.often(
      names[name],
      roles.filter((r) => r.name === name).reduce((n, r) => n + r.chains.length, 0),
    ),
    sign: (x: number) => `<rect x="${px(x)}" y="${px(y - 10)}" width="30" height="12" ${style}/>`,
  }));
  if (marks)
    entries.push({
      name: words.point,
      sign: (x) => `<path d="M${px(x + 11)} ${px(y - 4)}h8M${px(x + 15)} ${px(y - 8)}v8" stroke="${INK}" stroke-width="0.8"/>`,
    });
  if (entries.length === 0) return { svg: '', bottom: y - 24 };
  const step = Math.min(190, (right - left) / entries.length);
  const svg = entries
    .map(({ name, sign }, i) => sign(left + i * step) + text(left + i * step + 38, y, print(name, reader), { size: 11, colour: INK }))
    .join('\n');
  return { svg, bottom: y };
};

const names: Readonly<Record<RoleName, Text>> = phrases('drawing-role', {
  outline: say`outline`,
  opening: say`opening`,
  hidden: say`hidden`,
  'left out': say`left out`,
  'open chain': say`open chain`,
});

const words = phrases('drawing-key', {
  often: (role: Text, lines: number) => say`${{ role }} (${{ lines: count(lines) }})`,
  point: say`point`,
});
