/** A partner firm that no work of the job is given to. */
import { phrase } from '../../../shared/phrase';
import { partnerSaid } from '../resolve/partners';
import type { Job } from '../workspace/job';
import type { SourceBlock } from '../workspace/source';
import { headOrigin, type Remark } from './remark';

/** Only of the job’s own file: a firm’s file may name all the partners it ever works with. An option may give it work. */
export function partnersIdle({ file, optionsWritten }: Job): Remark[] {
  const partners = file.blocks.filter((b) => b.kind === 'partner' && b.name !== undefined);
  if (!partners.length) return [];
  const named = new Set(file.blocks.map(partnerSaid));
  const changes = optionsWritten.flatMap((option) => option.lines).join('\n');
  return partners
    .filter(({ name }) => !named.has(name!) && !changes.includes(` by ${name}`))
    .map((block) => partnerIdle(block, block.name!));
}

/** No way out is offered: which work it does only the reader knows. */
function partnerIdle(block: SourceBlock, name: string): Remark {
  const message = phrase`No work is done by this partner. Write “by ${name}” under a wall, a pier or a repair, or take it out.`;
  return { code: 'partner-idle', severity: 'hint', origin: headOrigin(block), message };
}
