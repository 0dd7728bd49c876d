/** The manual of all findings: the catalogue of each layer and what its manual says, in the order in which a job goes through them. */
import { catalogue as accuracyCatalogue } from '../../accuracy/findings.ts';
import { manual as accuracyManual } from '../../accuracy/manual.ts';
import { catalogue as drawingCatalogue } from '../../drawing/findings.ts';
import { manual as drawingManual } from '../../drawing/manual.ts';
import { catalogue as estimateCatalogue } from '../../estimate/findings.ts';
import { manual as estimateManual } from '../../estimate/manual.ts';
import { catalogue as dialectCatalogue } from '../../nc/dialect/findings.ts';
import { manual as dialectManual } from '../../nc/dialect/manual.ts';
import { catalogue as readCatalogue } from '../../nc/read/findings.ts';
import { manual as readManual } from '../../nc/read/manual.ts';
import { catalogue as writeCatalogue } from '../../nc/write/findings.ts';
import { manual as writeManual } from '../../nc/write/manual.ts';
import { catalogue as nestCatalogue } from '../../nest/findings.ts';
import { manual as nestManual } from '../../nest/manual.ts';
import { catalogue as physicsCatalogue } from '../../physics/findings.ts';
import { manual as physicsManual } from '../../physics/manual.ts';
import { catalogue as planCatalogue } from '../../plan/findings.ts';
import { manual as planManual } from '../../plan/manual.ts';
import { catalogue as proofCatalogue } from '../../proof/findings.ts';
import { manual as proofManual } from '../../proof/manual.ts';
import { catalogue as curveCatalogue } from '../../shapes/curve/findings.ts';
import { manual as curveManual } from '../../shapes/curve/manual.ts';
import { catalogue as shapesCatalogue } from '../../shapes/findings.ts';
import { catalogue as keywayCatalogue } from '../../shapes/keyway/findings.ts';
import { manual as keywayManual } from '../../shapes/keyway/manual.ts';
import { catalogue as letteringCatalogue } from '../../shapes/lettering/findings.ts';
import { manual as letteringManual } from '../../shapes/lettering/manual.ts';
import { manual as shapesManual } from '../../shapes/manual.ts';
import { catalogue as plainCatalogue } from '../../shapes/plain/findings.ts';
import { manual as plainManual } from '../../shapes/plain/manual.ts';
import { catalogue as splineCatalogue } from '../../shapes/spline/findings.ts';
import { manual as splineManual } from '../../shapes/spline/manual.ts';
import { catalogue as teethCatalogue } from '../../shapes/teeth/findings.ts';
import { manual as teethManual } from '../../shapes/teeth/manual.ts';
import { catalogue as toolCatalogue } from '../../shapes/tool/findings.ts';
import { manual as toolManual } from '../../shapes/tool/manual.ts';
import { catalogue as wheelCatalogue } from '../../shapes/wheel/findings.ts';
import { manual as wheelManual } from '../../shapes/wheel/manual.ts';
import type { Catalogue, FindingKind } from '../../text/finding.ts';
import type { Manual, ManualEntry } from '../../text/manual.ts';
import { catalogue as jobCatalogue } from '../findings.ts';
import { manual as jobManual } from '../manual.ts';

export interface ManualChapter {
  /** The folder whose findings these are. */
  readonly folder: string;
  readonly catalogue: Catalogue;
  readonly manual: Readonly<Record<string, ManualEntry>>;
}

/** Ties a manual to the catalogue whose codes it explains. */
const chapter = <C extends Catalogue>(folder: string, catalogue: C, manual: Manual<C>): ManualChapter => ({ folder, catalogue, manual });

export const chapters: readonly ManualChapter[] = [
  chapter('drawing', drawingCatalogue, drawingManual),
  chapter('shapes', shapesCatalogue, shapesManual),
  chapter('shapes/plain', plainCatalogue, plainManual),
  chapter('shapes/teeth', teethCatalogue, teethManual),
  chapter('shapes/spline', splineCatalogue, splineManual),
  chapter('shapes/keyway', keywayCatalogue, keywayManual),
  chapter('shapes/wheel', wheelCatalogue, wheelManual),
  chapter('shapes/curve', curveCatalogue, curveManual),
  chapter('shapes/tool', toolCatalogue, toolManual),
  chapter('shapes/lettering', letteringCatalogue, letteringManual),
  chapter('physics', physicsCatalogue, physicsManual),
  chapter('plan', planCatalogue, planManual),
  chapter('nest', nestCatalogue, nestManual),
  chapter('nc/dialect', dialectCatalogue, dialectManual),
  chapter('nc/write', writeCatalogue, writeManual),
  chapter('nc/read', readCatalogue, readManual),
  chapter('proof', proofCatalogue, proofManual),
  chapter('accuracy', accuracyCatalogue, accuracyManual),
  chapter('estimate', estimateCatalogue, estimateManual),
  chapter('job', jobCatalogue, jobManual),
];

/** None where no layer has the code. */
export const manualOf = (code: string): (FindingKind & ManualEntry) | undefined => {
  const owner = chapters.find(({ catalogue }) => Object.hasOwn(catalogue, code));
  const kind = owner?.catalogue[code];
  const entry = owner?.manual[code];
  return kind === undefined || entry === undefined ? undefined : { ...kind, ...entry };
};
