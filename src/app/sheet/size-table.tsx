/** The sizes of a part by numbers: each shows in the picture how it is taken, and can be asked why. */
import type { ReactNode } from 'react';
import { WhyPlace } from '../fields/calculation.tsx';
import { FigureButton } from '../fields/figure-table.tsx';
import { useOnSheet, useTools } from '../fields/tools.ts';
import { handOver } from '../look/hand-over.ts';
import { useWords } from '../words/use-words.ts';
import type { ShapeSizeView } from '../work/views.ts';

export const SizeTable = ({ sizes }: { readonly sizes: readonly ShapeSizeView[] }): ReactNode => {
  const words = useWords().shape;
  const limited = sizes.some((s) => s.limits !== undefined);
  return (
    <div className="table-place">
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reached by keyboard */}
      <section className="table-scroll sizes" tabIndex={0} aria-labelledby="sizes-title">
        <table>
          <caption id="sizes-title">{words.sizes}</caption>
          <thead>
            <tr>
              <th scope="col" data-align="left">
                {words.size}
              </th>
              <th scope="col" data-align="right">
                {words.is}
              </th>
              {limited && (
                <th scope="col" data-align="right">
                  {words.limits}
                </th>
              )}
            </tr>
          </thead>
          <tbody>
            {sizes.map((size) => (
              <SizeRow key={size.shown.key} size={size} limited={limited} />
            ))}
          </tbody>
        </table>
      </section>
      <WhyPlace place="shape" />
      <p className="table-note">{words.sizesHelp}</p>
      <SaveDrawing />
    </div>
  );
};

const SizeRow = ({ size: { shown, limits, taking }, limited }: { readonly size: ShapeSizeView; readonly limited: boolean }): ReactNode => {
  const { sheet, numbers } = useTools();
  const point = (on: boolean): void => {
    if (taking === undefined) return;
    if (on) sheet.store.setState({ pointed: shown.key });
    else if (sheet.store.getState().pointed === shown.key) sheet.store.setState({ pointed: undefined });
  };
  return (
    <tr onPointerEnter={() => point(true)} onPointerLeave={() => point(false)} onFocus={() => point(true)} onBlur={() => point(false)}>
      <th scope="row">{shown.name}</th>
      <td data-align="right">
        {/* To a tenth of a µm, as it is printed: nobody measures closer. */}
        <FigureButton shown={shown} place="shape" said={shown.unit === 'mm' ? numbers.length(shown.value) : numbers.value(shown)} />
      </td>
      {limited && (
        <td data-align="right">{limits === undefined ? '' : `${numbers.length(limits.low)} … ${numbers.length(limits.high)}`}</td>
      )}
    </tr>
  );
};

const SaveDrawing = (): ReactNode => {
  const words = useWords().shape;
  const { sheet, numbers } = useTools();
  const name = useOnSheet((s) => s.record?.name) ?? '';
  const save = async (format: 'dxf' | 'svg'): Promise<void> => {
    const text = await sheet.worker().shapeFile(format, numbers.lengthUnit);
    if (text !== undefined) handOver(`${name.replace(/[^\p{L}\p{N} ._-]/gu, '_')}.${format}`, new Blob([text]));
  };
  return (
    <p className="save-drawing">
      {words.saveDrawing}{' '}
      {(['dxf', 'svg'] as const).map((format) => (
        <button key={format} type="button" className="plain" onClick={() => void save(format)}>
          {format.toUpperCase()}
        </button>
      ))}
    </p>
  );
};
