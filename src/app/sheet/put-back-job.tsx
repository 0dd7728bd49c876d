/** Where a job cannot be found or saved because it lies in the bin: since when, and the way back. */

import { type ReactNode, useEffect, useState } from 'react';
import type { BinnedJob } from '../../server/message/answers.ts';
import { localMoment } from '../../text/print/local.ts';
import { fetchBin, returnJob } from '../state/server.ts';
import { useWords } from '../words/use-words.ts';

interface PutBackJobProps {
  readonly id: string;
  readonly onBack: () => void;
}

export const PutBackJob = ({ id, onBack }: PutBackJobProps): ReactNode => {
  const words = useWords().sheet;
  const job = useBinned(id);
  const [fault, setFault] = useState<string | undefined>();
  if (job === undefined) return null;
  const putBack = async (): Promise<void> => {
    const answer = await returnJob(job.bin);
    // Somebody else was faster: it is back all the same.
    if (answer.kind === 'ok' || (answer.kind === 'refused' && answer.status === 409)) return onBack();
    setFault(answer.kind === 'gone' ? words.serverGone : answer.error.sentence);
  };
  return (
    <p>
      {words.inBin(job.name, localMoment(job.binnedAt))}{' '}
      <button type="button" onClick={() => void putBack()}>
        {words.putBack}
      </button>
      {fault !== undefined && (
        <span className="fault" role="alert">
          {' '}
          {fault}
        </span>
      )}
    </p>
  );
};

const useBinned = (id: string): BinnedJob | undefined => {
  const [job, setJob] = useState<BinnedJob | undefined>();
  useEffect(() => {
    let wanted = true;
    void fetchBin().then((answer) => {
      if (wanted && answer.kind === 'ok') setJob(answer.value.jobs.find((j) => j.id === id));
    });
    return () => {
      wanted = false;
    };
  }, [id]);
  return job;
};
