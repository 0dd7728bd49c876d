/** The page at the machine of one job. */
import type { ReactNode } from 'react';
import { RunPage } from '../run/run-page.tsx';
import { OpenPage } from './open-page.tsx';

const MachinePage = ({ id }: { readonly id: string }): ReactNode => <OpenPage id={id}>{(sheet) => <RunPage sheet={sheet} />}</OpenPage>;
export default MachinePage;
