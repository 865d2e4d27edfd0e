/** The work in a client's words: what the engine says of it, the firm's notes, and a drawing. */
import { wordOf } from '../../engine/resolve/book';
import type { Work } from '../../engine/work/needs';
import type { Job } from '../../engine/workspace/job';
import { drawingToSvg } from '../svg';
import { drawingOf, type Naming } from '../work-drawing';

export interface QuotedWork {
  readonly title: string;
  readonly says: readonly string[];
  readonly notes: readonly string[];
  readonly drawing: { readonly svg: string; readonly words: string } | undefined;
}

/** On a quote a brick narrower than a line of print shows nothing; this keeps pages of long walls light. */
const MOST_BRICKS = 5000;

export function quotedWorks(job: Job): QuotedWork[] {
  return job.works.map((work) => {
    const title = titleOf(work, job.works);
    const drawing = drawingOf(work, { title, naming: namingFor(work), mostBricks: MOST_BRICKS });
    return {
      title,
      says: work.facts.says,
      notes: work.notes,
      drawing: drawing && {
        svg: drawingToSvg(drawing, undefined, true),
        words: drawing.description,
      },
    };
  });
}

const KINDS: Readonly<Record<string, string>> = { wall: 'Wall', pier: 'Pier', repair: 'Repair' };

/** Work without a title is called by its kind, and numbered where there are more: its name is the file's own. */
function titleOf(work: Work, all: readonly Work[]): string {
  if (hasTitle(work)) return work.title;
  const kind = KINDS[work.kind] ?? 'Work';
  const alike = all.filter((w) => w.kind === work.kind && !hasTitle(w));
  return alike.length > 1 ? `${kind} ${alike.indexOf(work) + 1}` : kind;
}

function hasTitle(work: Work): boolean {
  return wordOf(work.block.read.heading?.values.title) !== '';
}

/** An opening or a pier by its title, else by its kind. */
function namingFor(work: Work): Naming {
  return (kind, name) => {
    const line = work.block.read.heading?.body.find(
      (l) => l.kind.key === kind && wordOf(l.values.name) === name,
    );
    return wordOf(line?.values.title) || kind;
  };
}
