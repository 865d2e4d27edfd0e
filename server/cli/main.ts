/** The command line. Everything of the process stands here; the rest is given an {@link Io}. */

import { lineFrom } from './files/line';
import { type Io, printable, wantsColour } from './io';
import { run } from './run';

function printer(stream: NodeJS.WriteStream, colour: boolean): (text: string) => void {
  return (text) => {
    stream.write(printable(text, colour));
  };
}

/** A reader that has seen enough (`| head`) closes the pipe: that is no fault. */
function allowClosing(stream: NodeJS.WriteStream): void {
  stream.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code === 'EPIPE') process.exit();
    throw error;
  });
}

function main(): void {
  const { stdout, stderr } = process;
  for (const stream of [stdout, stderr]) allowClosing(stream);
  const colour = wantsColour(process.env, stdout.isTTY === true);
  const io: Io = {
    cwd: process.cwd(),
    colour,
    terminal: stdout.isTTY === true,
    out: printer(stdout, colour),
    raw: (content) => void stdout.write(content),
    err: printer(stderr, false),
  };
  if (process.stdin.isTTY && stdout.isTTY) {
    io.ask = (question) => {
      io.out(question);
      return lineFrom(0);
    };
  }
  process.exitCode = run(process.argv.slice(2), io);
}

main();
