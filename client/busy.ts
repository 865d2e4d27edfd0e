/** Work that may take long: shown in the window’s status bar, or with a way to stop it. */
import { type CancellationToken, type Progress, ProgressLocation, window } from 'vscode';
import type { Server } from './server';

/** For what takes a moment, and only sometimes more. */
export function briefly<R>(title: string, work: () => Promise<R>): Promise<R> {
  return Promise.resolve(window.withProgress({ location: ProgressLocation.Window, title }, work));
}

let count = 0;

/** For what looks through many files: it tells how far it is, and can be cancelled. */
export function atLength<R>(
  server: Server,
  title: string,
  work: (workDoneToken: string, token: CancellationToken) => Promise<R>,
): Promise<R> {
  const options = { location: ProgressLocation.Notification, title, cancellable: true };
  const run = async (progress: Progress<{ message?: string }>, token: CancellationToken) => {
    count += 1;
    const name = `perpend-${count}`;
    const telling = server.onProgress(name, ({ message }) => progress.report({ message }));
    try {
      return await work(name, token);
    } finally {
      telling.dispose();
    }
  };
  return Promise.resolve(window.withProgress(options, run));
}
