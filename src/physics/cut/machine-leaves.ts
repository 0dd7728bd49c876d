/** The numbers of a machine that go into accuracy and feed, each one leaf wherever it goes in. */
import type { Figure } from '../../quantity/figure.ts';
import { leafOf } from '../../quantity/leaf-of.ts';
import { saidOf } from '../../quantity/source.ts';
import { say } from '../../text/say.ts';
import { servoSpread } from '../starting-model.ts';
import type { Machine } from './machine.ts';

const by = ({ name }: Machine) => ({ basis: 'shop', source: saidOf(name) }) as const;

export const formFloorOf = (machine: Machine): Figure =>
  leafOf(machine, {
    key: 'machine.form-floor',
    name: say('machine.form-floor')`form error of the machine itself`,
    value: machine.bestFormError,
    unit: 'µm',
    ...by(machine),
  });

export const servoLimitOf = (machine: Machine): Figure =>
  leafOf(machine, {
    key: 'machine.servo-limit',
    name: say('machine.servo-limit')`servo limit`,
    value: machine.servoLimit,
    unit: 'mm/min',
    deviation: machine.servoLimit * servoSpread,
    ...by(machine),
  });

export const positioningOf = (machine: Machine): Figure =>
  leafOf(machine, {
    key: 'machine.positioning',
    name: say('machine.positioning')`machine positioning`,
    value: machine.positioning,
    unit: 'µm',
    ...by(machine),
  });
