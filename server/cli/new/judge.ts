/** Whether an answer is one: by what the job would be told at its line that it was not told before. */
import type { Session } from '../session';
import type { Judge } from './answers';

/** `file`: where the text will stand. */
export function judgeIn(session: Session, file: string): Judge {
  return (text, line) => {
    const { findings } = session.draft(file, text).job;
    return findings.find((f) => f.severity === 'error' && f.place.line === line)?.message;
  };
}
