/** A part by numbers in the chapter of the drawing: its numbers, and the sizes one would measure. */
import type { ReactNode } from 'react';
import { isShapeKind, shapeForm } from '../../job/request/shape-keys.ts';
import { print } from '../../text/print/print.ts';
import { useInput, useOnSheet } from '../fields/tools.ts';
import { ShapeRow } from './shape-row.tsx';
import { SizeTable } from './size-table.tsx';
import '../look/shape.css';
import { useReader } from '../words/use-words.ts';

export const ShapePart = (): ReactNode => {
  const reader = useReader();
  const input = useInput();
  const shape = useOnSheet((s) => s.sheet?.shape);
  const kind = (input['shape'] as { readonly kind?: unknown } | undefined)?.kind;
  if (typeof kind !== 'string' || !isShapeKind(kind)) return null;
  const form = shapeForm(kind);
  return (
    <section className="shape" aria-labelledby="shape-title">
      <h3 id="shape-title">{shape?.name ?? print(form.title, reader)}</h3>
      <p className="fact">{print(form.what, reader)}.</p>
      <div className="fields">
        {form.keys.map((key) => (
          <ShapeRow key={`${kind} ${key.key}`} form={key} />
        ))}
      </div>
      {shape !== undefined && shape.sizes.length > 0 && <SizeTable sizes={shape.sizes} />}
    </section>
  );
};
