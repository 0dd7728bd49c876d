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
import { chapters as shapeChapters } from '../../shapes/list/manual-of-shapes.ts';
import { chapter, type ManualChapter, type ManualEntry } from '../../text/manual.ts';
import { catalogue as jobCatalogue } from '../findings.ts';
import { manual as jobManual } from '../manual.ts';

export const chapters: readonly ManualChapter[] = [
  chapter('drawing', drawingCatalogue, drawingManual),
  ...shapeChapters,
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
export const manualOf = (code: string): ManualEntry | undefined => chapters.find(({ manual }) => Object.hasOwn(manual, code))?.manual[code];
