/** The numbers of a machine that go into accuracy and feed, each one leaf wherever it goes in. */
import type { Figure } from '../../quantity/figure.ts';
import { leafOf } from '../../quantity/leaf-of.ts';
import { saidOf, saidOfBuiltIn } from '../../quantity/source.ts';
import { say } from '../../text/say.ts';
import { servoSpread } from '../starting-model.ts';
import { type Machine, standardMachine } from './machine.ts';

const FIGURES = ['bestFormError', 'positioning', 'servoLimit', 'travelFeed', 'threadMinutes'] as const;

/** The shop says its own machine; that of the house is invented. */
export const saidOfMachine = (machine: Machine) =>
  machine.id === standardMachine.id && FIGURES.every((key) => machine[key] === standardMachine[key])
    ? ({ basis: 'assumed', source: saidOfBuiltIn(machine.name) } as const)
    : ({ basis: 'shop', source: saidOf(machine.name) } as const);

export const formFloorOf = (machine: Machine): Figure =>
  leafOf(machine, {
    key: 'machine.form-floor',
    name: say('machine.form-floor')`form error of the machine itself`,
    value: machine.bestFormError,
    unit: 'µm',
    ...saidOfMachine(machine),
  });

export const servoLimitOf = (machine: Machine): Figure =>
  leafOf(machine, {
    key: 'machine.servo-limit',
    name: say('machine.servo-limit')`servo limit`,
    value: machine.servoLimit,
    unit: 'mm/min',
    deviation: machine.servoLimit * servoSpread,
    ...saidOfMachine(machine),
  });

export const positioningOf = (machine: Machine): Figure =>
  leafOf(machine, {
    key: 'machine.positioning',
    name: say('machine.positioning')`machine positioning`,
    value: machine.positioning,
    unit: 'µm',
    ...saidOfMachine(machine),
  });
