/** The walls of wire, plasma, laser and jet at the same thickness, with the reason why each would do or not. */
import type { ReactNode } from 'react';
import type { Numbers } from '../../text/print/reader.ts';
import { useWords } from '../words/use-words.ts';
import type { FaceView, WallView } from '../work/views.ts';
import { faceLine, sidewaysFactor } from './cut-faces.ts';

interface OtherWallsProps {
  readonly wall: WallView;
  readonly numbers: Pick<Numbers, 'value' | 'length' | 'finish' | 'plain'>;
  readonly width: number;
}

/** px */
const HIGH = 190;
const LEAST = 130;
const BAR = 34;

export const OtherWalls = ({ wall, numbers, width }: OtherWallsProps): ReactNode => {
  const words = useWords().glass;
  const { faces, thickness, without } = wall;
  const columns = Math.max(1, Math.min(faces.length, Math.floor((width - BAR) / LEAST)));
  const each = Math.min(190, Math.floor((width - BAR) / columns) - 12);
  const scale = HIGH / thickness;
  const factor = sidewaysFactor(faces, scale, each * 0.42);
  return (
    <>
      <h3>{words.others(numbers.length(thickness))}</h3>
      <div className="other-walls">
        <svg width={BAR - 10} height={HIGH + 12} viewBox={`0 0 ${BAR - 10} ${HIGH + 12}`} aria-hidden="true">
          <path className="glass-bar" d={`M22 6h-6V${HIGH + 6}h6`} />
          <text className="glass-bar-text" transform={`translate(12 ${HIGH / 2 + 6}) rotate(-90)`} textAnchor="middle">
            {numbers.length(thickness)}
          </text>
        </svg>
        {faces.map((face) => (
          <figure key={face.process} style={{ width: each }}>
            <Face face={face} width={each} sideways={scale * factor} />
            <figcaption>
              <strong>{face.name}</strong>
              <br />
              {face.shape === 'barrel' ? words.barrel(micrometres(numbers, face.off)) : words.within(numbers.length(round(face.off)))}
              <br />
              {face.ra[0] === face.ra[1]
                ? numbers.finish(round(face.ra[0]))
                : words.raRange(numbers.finish(round(face.ra[0])), numbers.finish(round(face.ra[1])).replace(/^Ra /, ''))}
            </figcaption>
          </figure>
        ))}
      </div>
      <p className="table-note">{words.othersCaption(numbers.plain(factor))}</p>
      <ul className="other-reasons">
        {faces.map((face) => (
          <li key={face.process}>{face.sentence}</li>
        ))}
        {without.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </>
  );
};

const round = (x: number): number => Number(x.toPrecision(2));

const micrometres = (numbers: Pick<Numbers, 'value'>, mm: number): string => {
  const value = mm * 1000;
  return numbers.value({ value, unit: 'µm', low: value * 0.9, high: value * 1.1 });
};

/** `sideways` is px in a mm across. */
const Face = ({ face, width, sideways }: { readonly face: FaceView; readonly width: number; readonly sideways: number }): ReactNode => {
  const straight = width * 0.5;
  const points = faceLine(face).map(({ down, off }) => `${(straight + off * sideways).toFixed(1)} ${(6 + down * HIGH).toFixed(1)}`);
  return (
    <svg width={width} height={HIGH + 12} viewBox={`0 0 ${width} ${HIGH + 12}`} aria-hidden="true">
      <path className="glass-metal" d={`M0 6L${points.join('L')}L0 ${HIGH + 6}Z`} />
      <path className="glass-straight" d={`M${straight} 0V${HIGH + 12}`} />
      <path className="glass-edge" d={`M${points.join('L')}`} />
    </svg>
  );
};
