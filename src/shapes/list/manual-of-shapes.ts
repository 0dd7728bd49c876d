/** The manual of the findings of all families of shapes. */

import { chapter, type ManualChapter } from '../../text/manual.ts';
import { catalogue as curveCatalogue } from '../curve/findings.ts';
import { manual as curveManual } from '../curve/manual.ts';
import { catalogue as shapesCatalogue } from '../findings.ts';
import { catalogue as keywayCatalogue } from '../keyway/findings.ts';
import { manual as keywayManual } from '../keyway/manual.ts';
import { catalogue as letteringCatalogue } from '../lettering/findings.ts';
import { manual as letteringManual } from '../lettering/manual.ts';
import { manual as shapesManual } from '../manual.ts';
import { catalogue as plainCatalogue } from '../plain/findings.ts';
import { manual as plainManual } from '../plain/manual.ts';
import { catalogue as splineCatalogue } from '../spline/findings.ts';
import { manual as splineManual } from '../spline/manual.ts';
import { catalogue as teethCatalogue } from '../teeth/findings.ts';
import { manual as teethManual } from '../teeth/manual.ts';
import { catalogue as toolCatalogue } from '../tool/findings.ts';
import { manual as toolManual } from '../tool/manual.ts';
import { catalogue as wheelCatalogue } from '../wheel/findings.ts';
import { manual as wheelManual } from '../wheel/manual.ts';

export const chapters: readonly ManualChapter[] = [
  chapter('shapes', shapesCatalogue, shapesManual),
  chapter('shapes/plain', plainCatalogue, plainManual),
  chapter('shapes/teeth', teethCatalogue, teethManual),
  chapter('shapes/spline', splineCatalogue, splineManual),
  chapter('shapes/keyway', keywayCatalogue, keywayManual),
  chapter('shapes/wheel', wheelCatalogue, wheelManual),
  chapter('shapes/curve', curveCatalogue, curveManual),
  chapter('shapes/tool', toolCatalogue, toolManual),
  chapter('shapes/lettering', letteringCatalogue, letteringManual),
];
