import { describe, expect, test } from 'vitest';
import { paint, printable, wantsColour } from '../../server/cli/io';
import { near } from '../../server/cli/near';
import { VERSION } from '../../server/cli/version';
import { readJson } from '../tree';
import { perpend, useCommandLine } from './perpend';

useCommandLine();

const ALL = `perpend: price and set out small brickwork jobs from a plain-text note

Usage: perpend COMMAND [OPTIONS] FILE

Commands:
  price FILE...       show the figures of a job: work, what to buy, hours, price
  check FILE...       list what is wrong, doubtful or to be careful of
  measure FILE        list what is not measured yet, and what the price hangs on
  match FILE [BLOCK]  compare bricks that might be bought with what stands there
  why FILE [FIGURE]   show how a figure came about, or list the figures
  format FILE...      print a file in one layout, or put files in it
  cuts FILE [BLOCK]   list what is cut, course by course, and from which bricks
  day FILE            put the work into days, and each task at its time
  draw FILE [BLOCK]   draw a wall or a pier, every brick, as SVG or DXF
  quote FILE          write the quote for the client, as HTML, PDF or Markdown
  invoice FILE        write an invoice: a stage, an amount or what is left
  buying FILE         write what to buy, merchant by merchant, in whole packs
  site FILE           write the site sheet: drawings, mixes, order, cautions
  changes FILE        tell the client what changed since the quote, and why
  record FILE WHAT    write what has happened into a job: sent, worked, paid
  result FILE         show what became of a job: cost, margin, hours, owed
  compare OLD NEW     tell what changed between two revisions of a job
  new TEMPLATE        make a job from a template, by a few questions
  next OLD            make a new job from a past one, at today’s rates
  share JOB           copy a job for a partner firm, without costs or money
  take OURS           take into a job what a partner’s copy says otherwise
  jobs FOLDER         look over a folder of jobs: out, won, owed, turnover
  schema              print the JSON Schema of what --json prints

Options of perpend itself:
  --help     show this; perpend COMMAND --help tells of one command
  --version  show the version
  help CODE  show what a finding means and what to do: perpend help fit-run

FILE is a job or another file in the notation; - stands for what is piped in.

A job can use other files of its workspace and no others. The workspace is the
folder given with --workspace; else the nearest folder at or above the file that
holds .git or package.json; else the current folder, if the file lies under it;
else the file's own folder. Links are followed, and may not lead out of it.

Exit codes:
  0  nothing wrong was found (warnings and notes may have been)
  1  a file, or a file it uses, has errors; format --check: a file would change;
     compare --check: anything that counts changed
  2  wrong use, a file that cannot be read or written, a fault of the program

Colour is used at a terminal only, and not where NO_COLOR is set. Nothing is
sent anywhere: perpend never uses the network.
`;

const FILE = `FILE is a job or another file in the notation; - stands for what is piped in.`;

const WORKSPACE = `A job can use other files of its workspace and no others. The workspace is the
folder given with --workspace; else the nearest folder at or above the file that
holds .git or package.json; else the current folder, if the file lies under it;
else the file's own folder. Links are followed, and may not lead out of it.`;

const CODES = `Exit codes:
  0  nothing wrong was found (warnings and notes may have been)
  1  a file, or a file it uses, has errors; format --check: a file would change;
     compare --check: anything that counts changed
  2  wrong use, a file that cannot be read or written, a fault of the program
`;

/** What the help of each command says before what all of them say. */
const EACH: Readonly<Record<string, string>> = {
  new: `perpend new: make a job from a template, by a few questions

Usage: perpend new [OPTIONS] TEMPLATE

TEMPLATE is one that ships (--list), or a file with a heading like
template "Garden wall" and lines like ask north length "How long is the wall?".
At a terminal what --set does not give is asked for, and an empty answer keeps
what the template says; elsewhere that holds, and is told. Where the template
uses no file, the nearest firm.perp in or above the folder of the new file is.

Options:
  --out FILE          the new file; one that is there is never written over
  --set ANSWER        an answer, as "wall length=7.4 m"; may be given again
  --list              list the templates that ship, and what they ask
  --json              print JSON (see: perpend schema)
  --workspace FOLDER  the folder whose files a job may use
  --help              show this`,
  next: `perpend next: make a new job from a past one, at today’s rates

Usage: perpend next [OPTIONS] OLD

The work is kept as it is written, comments too; options that were accepted are
written into it. Client, site, date, reference, record, who is billed, an agreed
price and discounts are cleared. Money that the job wrote down for itself is
brought up to what the firm’s files say now. Told is what the price moved by.
Notes and titles stay as they are: read them before the job goes to anyone else.

Options:
  --out FILE          the new file; one that is there is never written over
  --title TEXT        its title; without it, the old one
  --client TEXT       for whom
  --site TEXT         where
  --ref TEXT          your reference
  --date DATE         the day of the quote, 2026-03-02
  --json              print JSON (see: perpend schema)
  --workspace FOLDER  the folder whose files a job may use
  --help              show this`,
  share: `perpend share: copy a job for a partner firm, without costs or money

Usage: perpend share [OPTIONS] JOB

The copy is one file: what the job needs of the files it uses is in it, and
libraries that ship stay named. It is the job as it was agreed.
  --without costs    no prices of what is bought, no labour, outputs, travel,
                     costs, overhead, profit, discounts, record, sources and
                     comments; what the client pays stays, if a price was given
  --without money    that too is left out
  --without nothing  the whole job, comments and record too
With client after a comma (money,client) also client, site and reference. Money
in titles and notes is taken out and told. Work, bricks, mixes and their packs
and waste stay: from a price and the work anyone can judge what is left of it.

Options:
  --for FIRM          whom it is for: said at its head
  --without WHAT      costs, money or nothing; and client, after a comma
  --out PATH          the new file, or a folder for it; nothing is written over
  --json              print JSON (see: perpend schema)
  --workspace FOLDER  the folder whose files a job may use
  --help              show this`,
  take: `perpend take: take into a job what a partner’s copy says otherwise

Usage: perpend take [OPTIONS] OURS

Lines that theirs has and ours lacks are put in, and those that say something
else are replaced; our comments, and lines that theirs does not have, stay and
are told. Prices and rates are taken only with --rates; the job’s own block, the
firm, the price, options and the record never. Titles and notes of which a part
was taken out before they went out are not taken. See first what changed:
perpend compare OURS THEIRS.

Options:
  --from FILE         the file that came back
  --block NAME        take this block, by its name; may be given again
  --all               take every block
  --rates             their prices, labour, outputs, travel and costs too
  --check             print what would be taken; write nothing
  --json              print JSON (see: perpend schema)
  --workspace FOLDER  the folder whose files a job may use
  --help              show this`,
  jobs: `perpend jobs: look over a folder of jobs: out, won, owed, turnover

Usage: perpend jobs [OPTIONS] FOLDER

From the records of all jobs under FOLDER. Turnover and tax are told by quarter,
once by the day of the invoice and once by the day of payment; what clients kept
back as the firm’s tax counts as paid. Currencies are never added together.

--rates shows what the days of past jobs come to: an amount an hour of those who
lay, on how many days of how many jobs it rests, and between what it lies. Of a
job where some day of a task has no amount nothing is taken. With --write only
jobs that use that firm’s file count. Hidden folders, node_modules and links are
passed by. Nothing is written without --write or --index.

Options:
  --date DATE         as it stood on that day, 2026-03-02; without it, today
  --all               list every job, and not the first few of each
  --rates             what the gang does in an hour, from past jobs
  --write FILE        with --rates: write what is offered into this firm’s file
  --index FILE        keep what was read in this file; read only what changed
  --json              print JSON (see: perpend schema)
  --workspace FOLDER  the folder whose files a job may use
  --help              show this`,
  price: `perpend price: show the figures of a job: work, what to buy, hours, price

Usage: perpend price [OPTIONS] FILE...

These are the firm's own figures, costs and profit among them. For the client
there is perpend quote.

Options:
  --with OPTIONS      with these options of the job taken, commas between them
  --json              print JSON (see: perpend schema)
  --workspace FOLDER  the folder whose files a job may use
  --help              show this`,
  check: `perpend check: list what is wrong, doubtful or to be careful of

Usage: perpend check [OPTIONS] FILE...

Each finding stands on one line, file:line:column first, and under it the ways
out of it, each with what to write. Errors come first, then warnings, notes,
cautions for the site and hints, each in the order of the file; the last line
counts them. Nothing is changed.
Of a folder every file in the notation under it is checked, but for hidden
folders and node_modules. --lines is for editors and other programs: a line is
FILE:LINE:COLUMN error|warning|note|hint CODE: MESSAGE, and stays so.

Options:
  --lines             one line for each finding, for programs, and no ways out
  --json              print JSON (see: perpend schema)
  --workspace FOLDER  the folder whose files a job may use
  --help              show this`,
  why: `perpend why: show how a figure came about, or list the figures

Usage: perpend why [OPTIONS] FILE [FIGURE]

A working is a tree: a figure, the sum that made it, and below it each part with
the line of the job, the firm's file or the library that says it. A part that
has been shown before is not shown again: (above). Steps that change nothing are
left out; --json has every one.

Options:
  --depth N           show so many levels of it; all of them without
  --json              print JSON (see: perpend schema)
  --workspace FOLDER  the folder whose files a job may use
  --help              show this`,
  format: `perpend format: print a file in one layout, or put files in it

Usage: perpend format [OPTIONS] FILE...

Indents, columns and empty lines are made one; words, numbers, comments and
their order stay. A line that cannot be read only moves to its depth. A file is
written whole or not at all, and keeps its mode.

Options:
  --write  put the files in order where they stand
  --check  change nothing; exit with 1 when a file would change
  --help   show this`,
  match: `perpend match: compare bricks that might be bought with what stands there

Usage: perpend match [OPTIONS] FILE [BLOCK]

BLOCK is the name of a repair; without it, all that buy a brick are listed. Its
match and candidates lines say which bricks; they are ranked by the match-order
of the defaults. Columns: by how much a brick’s length, width and height differ
from what stands; the bed joint that keeps the gauge; drift, by which its
courses come out too high or too low at its usual joint; what the bricks that
this repair is short of cost, before overhead, profit and tax.

Options:
  --json              print JSON (see: perpend schema)
  --workspace FOLDER  the folder whose files a job may use
  --help              show this`,
  measure: `perpend measure: list what is not measured yet, and what the price hangs on

Usage: perpend measure [OPTIONS] FILE

First the lines with ? in them, and what waits for each. Then what no line says
and a caution hangs on, such as how far the boundary is. Then the ranges,
each with its share of the spread of the price, the biggest first: measure that
before you price. The spread is what 256 samples come to, the same every time,
each range taken evenly from end to end; low and high are where the defaults’
price-between has them.

Options:
  --json              print JSON (see: perpend schema)
  --workspace FOLDER  the folder whose files a job may use
  --help              show this`,
  day: `perpend day: put the work into days, and each task at its time

Usage: perpend day [OPTIONS] FILE

Tasks follow one another as the trade does them. What is built up no higher than
a lift a day waits for the next; other work goes between. Driving, setting up,
cleaning down and breaks are as the labour and travel blocks say.

Options:
  --start HH:MM       start the days then; without it, as the labour block says
  --json              print JSON (see: perpend schema)
  --workspace FOLDER  the folder whose files a job may use
  --help              show this`,
  cuts: `perpend cuts: list what is cut, course by course, and from which bricks

Usage: perpend cuts [OPTIONS] FILE [BLOCK]

BLOCK is the name of a wall, a pier or a repair; without it, all are listed.
Pieces are nested into as few bricks as may be, with what the saw takes; bats at
hand are used first. Courses count from 1, places from the left end.

Options:
  --json              print JSON (see: perpend schema)
  --workspace FOLDER  the folder whose files a job may use
  --help              show this`,
  draw: `perpend draw: draw a wall or a pier, every brick, as SVG or DXF

Usage: perpend draw [OPTIONS] FILE [BLOCK]

BLOCK is the name of a wall, a pier or a repair; where there is only one, leave
it out. front and back are the faces; plan is two courses, one on the other, at
every end, quoin, reveal and pier; top is the coping from above; rod the gauge
rod. SVG sheets are to scale on paper; DXF is at full size in millimetres.

Options:
  --view VIEW         front, back, plan, top, rod or all; without it, front
  --format FORMAT     svg or dxf; without it, as the file ends, else svg
  --course NUMBER     plan: the lower of the two courses, counted from 1
  --out PATH          write to this file, or each sheet into this folder
  --workspace FOLDER  the folder whose files a job may use
  --help              show this`,
  quote: `perpend quote: write the quote for the client, as HTML, PDF or Markdown

Usage: perpend quote [OPTIONS] FILE

One file that needs no other, to print or to send. It holds what will be
done, the price and the terms; no costs, no rates and no profit. While the price
is not complete, or the file or one it uses has errors, it says at its top that
it is not a quote, and names no amount.

Options:
  --as FORM           html, pdf or md; else as the file ends, or html
  --json              print JSON (see: perpend schema)
  --out PATH          write to this file; without it, print
  --workspace FOLDER  the folder whose files a job may use
  --help              show this`,
  invoice: `perpend invoice: write an invoice: a stage, an amount or what is left

Usage: perpend invoice [OPTIONS] FILE

What the client agreed to, at the price the client holds, tax by tax. Without
an option it is the last invoice of the record; where there is none, the next
stage that is not invoiced yet, or what is left. It writes nothing into the
record: perpend record FILE invoiced AMOUNT as NUMBER does.

With --as ubl, or into a file that ends in .xml, it is UBL 2.1 as EN 16931 wants
it. What that needs and the files do not say is named, and nothing is written.

Options:
  --number NUMBER     the number of the invoice; of one in the record, that one
  --date DATE         its date, 2026-03-12
  --stage STAGE       for a stage of the price, by its title or its place from 1
  --amount AMOUNT     for so much, tax in it: 362.50
  --as FORM           html, pdf, md, or ubl for an electronic invoice (EN 16931)
  --json              print JSON (see: perpend schema)
  --out PATH          write to this file; without it, print
  --workspace FOLDER  the folder whose files a job may use
  --help              show this`,
  buying: `perpend buying: write what to buy, merchant by merchant, in whole packs

Usage: perpend buying [OPTIONS] FILE

What a brick, a material or a mix is bought from is said by its “merchant” line.
Without --prices there is no money on it.

Options:
  --prices            with what the firm pays for each
  --bom               csv: begin with the mark by which spreadsheets know UTF-8
  --as FORM           html, pdf, md, csv or xlsx; else as the file ends, or html
  --json              print JSON (see: perpend schema)
  --out PATH          write to this file; without it, print
  --workspace FOLDER  the folder whose files a job may use
  --help              show this`,
  site: `perpend site: write the site sheet: drawings, mixes, order, cautions

Usage: perpend site [OPTIONS] FILE

Everything that whoever builds it needs at hand, and no money.

Options:
  --as FORM           html, pdf or md; else as the file ends, or html
  --json              print JSON (see: perpend schema)
  --out PATH          write to this file; without it, print
  --workspace FOLDER  the folder whose files a job may use
  --help              show this`,
  changes: `perpend changes: tell the client what changed since the quote, and why

Usage: perpend changes [OPTIONS] FILE

Beside what was sent last, as git holds it; or beside --since; or of two files.
Where no revision of git holds what was sent, only the price is put beside the
other. Why it changed is what the record says was “found” since. It holds the
work in plain words and the price; no costs, no rates and no profit.

Options:
  --since REVISION    with JOB as it stood in this revision of git
  --as FORM           html, pdf or md; else as the file ends, or html
  --json              print JSON (see: perpend schema)
  --out PATH          write to this file; without it, print
  --workspace FOLDER  the folder whose files a job may use
  --help              show this`,
  record: `perpend record: write what has happened into a job: sent, worked, paid

Usage: perpend record [OPTIONS] FILE WHAT

WHAT is a line of the record as it would be written, without its date:

  perpend record job.perp sent
  perpend record job.perp accepted caps
  perpend record job.perp worked 2 people 7.5 h facework 410 bricks
  perpend record job.perp spent £212.40 "sand and cement" for materials
  perpend record job.perp invoiced £362.50 as 26-041-1 "Deposit on order"
  perpend record job.perp paid £362.50

sent and accepted take the price that the job comes to and keep what it is made
of, so that what has moved can be told later. The line is put in at the end of
the record; nothing else of the file changes. It is written whole or not at all.

Options:
  --date DATE         the day it happened, 2026-03-02; without it, today
  --json              print JSON (see: perpend schema)
  --workspace FOLDER  the folder whose files a job may use
  --help              show this`,
  result: `perpend result: show what became of a job: cost, margin, hours, owed

Usage: perpend result [OPTIONS] FILE

From what the record says was worked and spent, beside what was reckoned for the
job as it was accepted. Hours are of one person; each costs what one of the gang
does on average. What is not recorded stands as it was reckoned.

With --as or --out it is a paper, for the firm and nobody else: it holds costs.

Options:
  --as FORM           html, pdf or md: a paper for the firm itself
  --json              print JSON (see: perpend schema)
  --out PATH          write to this file; without it, print
  --workspace FOLDER  the folder whose files a job may use
  --help              show this`,
  compare: `perpend compare: tell what changed between two revisions of a job

Usage: perpend compare [OPTIONS] OLD NEW

OLD and NEW are files; or give JOB alone with --since or --sent. Told are pieces
of work, facts, quantities, money, cautions, findings and faces that look other
than before. Comments, layout and how a length is written are no change. Files
that a job uses are taken from the same revision; libraries that ship are those
of this version. It exits with 0 whatever changed, and whatever is wrong in the
files; with --check it exits with 1 when anything that counts changed.

git diff shows the same where .gitattributes holds *.perp diff=perpend, after:
  git config diff.perpend.command "perpend compare --driver --"
It is given the seven words that git gives to such a command, or nine for a
file that was renamed. Files that a job uses are then those of the work tree.

Options:
  --since REVISION    with JOB as it stood in this revision of git
  --sent              with what was sent last, as the record says
  --drawing           draw the faces that changed, as SVG or DXF
  --block NAME        draw only this piece of work
  --out PATH          write the drawing or the JSON to this file
  --check             exit with 1 when anything that counts changed
  --driver            be the diff of git: see above
  --json              print JSON (see: perpend schema)
  --workspace FOLDER  the folder whose files a job may use
  --help              show this`,
  schema: `perpend schema: print the JSON Schema of what --json prints

Usage: perpend schema [OPTIONS]

Within a version of the format things are only ever added.

Options:
  --help  show this`,
};

describe('help', () => {
  test('of perpend names every command, the exit codes and the workspace', () => {
    for (const args of [['--help'], ['-h'], ['help']])
      expect(perpend(args)).toEqual({ code: 0, out: ALL, err: '' });
  });

  test.each(Object.entries(EACH))('of perpend %s', (command, own) => {
    const file = command === 'schema' ? [] : [FILE];
    const workspace = ['schema', 'format'].includes(command) ? [] : [WORKSPACE];
    const wanted = [own, ...file, ...workspace, CODES].join('\n\n');
    expect(perpend([command, '--help'])).toEqual({ code: 0, out: wanted, err: '' });
    expect(perpend(['help', command]).out).toBe(wanted);
  });

  test('fits 80 columns', () => {
    const texts = [ALL, ...Object.keys(EACH).map((command) => perpend(['help', command]).out)];
    expect(
      texts
        .join('\n')
        .split('\n')
        .filter((line) => line.length > 80),
    ).toEqual([]);
  });

  test('the version is the package’s', () => {
    expect(VERSION).toBe(readJson<{ version: string }>('package.json').version);
    expect(perpend(['--version'])).toEqual({ code: 0, out: `perpend ${VERSION}\n`, err: '' });
  });
});

describe('wrong use exits with 2 and says what to do', () => {
  const cases: [string[], string][] = [
    [['job.perp'], 'job.perp is a file, and no command. To price it: perpend price job.perp.'],
    [['prcie', 'a.perp'], 'There is no command prcie. Did you mean price?'],
    [['prise', 'a.perp'], 'There is no command prise. Did you mean price?'],
    [['zzzzzz'], 'There is no command zzzzzz.'],
    [['price'], 'perpend price needs a file.'],
    [['price', '--jsn', 'a.perp'], 'There is no option --jsn. Did you mean --json?'],
    [
      ['check', '--fix', 'a.perp'],
      'There is no option --fix. There are --lines, --json, --workspace.',
    ],
    [['price', '--json=1', 'a.perp'], '--json takes no value.'],
    [['price', '--json', '--json', 'a.perp'], '--json stands twice.'],
    [['quote', 'a.perp', '--out'], '--out needs a value: --out PATH'],
    [['quote', 'a.perp', 'b.perp'], 'perpend quote takes one file at a time.'],
    [['check', '-', '-'], 'What is piped in can be read only once: give - once.'],
    [['schema', 'a.perp'], 'perpend schema takes no file.'],
  ];
  test.each(cases)('%j', (args, said) => {
    const ran = perpend(args);
    expect(ran).toEqual({ code: 2, out: '', err: `perpend: ${said} See: perpend --help\n` });
  });

  test('no word at all is answered with the help', () => {
    expect(perpend([])).toEqual({ code: 2, out: '', err: ALL });
  });

  test('a file whose name begins with a dash comes after --', () => {
    const { err } = perpend(['check', '--', '--json']);
    expect(err).toBe('perpend: --json cannot be read: there is no such file.\n');
  });
});

describe('colour', () => {
  test('is for a terminal, unless NO_COLOR or a dumb terminal says no', () => {
    expect(wantsColour({ TERM: 'xterm' }, true)).toBe(true);
    expect(wantsColour({ TERM: 'xterm' }, false)).toBe(false);
    expect(wantsColour({ NO_COLOR: '1' }, true)).toBe(false);
    expect(wantsColour({ NO_COLOR: '' }, true)).toBe(true);
    expect(wantsColour({ TERM: 'dumb' }, true)).toBe(false);
  });

  test('comes through the cleaning that takes every other control away', () => {
    const red = paint({ colour: true }, 'red', 'error');
    expect(printable(red, true)).toBe('\u001b[31merror\u001b[0m');
    expect(printable(red, false)).toBe('\ufffd[31merror\ufffd[0m');
    expect(printable('\u001b[2J\u001b]0;x\u0007', true)).toBe('\ufffd[2J\ufffd]0;x\ufffd');
    expect(paint({ colour: false }, 'red', 'error')).toBe('error');
  });
});

test('near words: only the nearest, at most three, and none for a stranger', () => {
  expect(near('chek', ['check', 'price'])).toEqual(['check']);
  expect(near('prcie', ['check', 'price'])).toEqual(['price']);
  expect(near('a.x', ['a.b', 'a.c', 'a.d', 'a.e'])).toEqual(['a.b', 'a.c', 'a.d']);
  expect(near('bricks', ['north.bricks', 'brick'])).toEqual(['north.bricks']);
  expect(near('zebra', ['check', 'price'])).toEqual([]);
  expect(near('x', [])).toEqual([]);
});
