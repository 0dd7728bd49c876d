/** A program that was read, moved to where its zero lies in the drawing. */
import { transformSegment, translation } from '../../geometry/transform.ts';
import type { ReadProgram } from './program.ts';

/** @param zero of the program, in the frame the moves are wanted in, mm. */
export const placedProgram = (program: ReadProgram, zero: { readonly x: number; readonly y: number } | undefined): ReadProgram => {
  if (zero === undefined || (zero.x === 0 && zero.y === 0)) return program;
  const move = translation(zero.x, zero.y);
  return {
    ...program,
    actions: program.actions.map((action) =>
      action.kind === 'move'
        ? { ...action, programmed: transformSegment(move, action.programmed), centre: transformSegment(move, action.centre) }
        : action,
    ),
  };
};
