/** Who sells and who buys, from the job and its firm's file. */
import { type BlockFacts, defaultLine, factsOf } from '../../engine/resolve/env';
import type { Job } from '../../engine/workspace/job';
import { fromBlock, fromLines, fromOwn } from '../from';
import { firmFacts } from '../letterhead';
import type { From } from '../paper/model';
import type { Party } from './types';

export function sellerOf(job: Job): Party {
  const firm = firmFacts(job);
  return partyOf(firm, firm?.name ?? '', [], job);
}

/** The `bill-to` block; else the first of the job's client lines as the name, and the others as the address. */
export function buyerOf(job: Job): Party {
  const block = job.file.blocks.find((b) => b.kind === 'bill-to');
  const facts = block && factsOf(block, job.env);
  if (facts) return partyOf(facts, facts.name, [], job);
  const [name = '', ...address] = jobLines(job, 'client');
  return partyOf(undefined, name, address.filter(Boolean), job);
}

/** Where the name and the address of who buys come from; of the block’s own line where a word is given. */
export function fromBuyer(job: Job, key?: string): From {
  const block = job.file.blocks.find((b) => b.kind === 'bill-to');
  if (!block) return fromOwn(job, 'client');
  const line = key ? factsOf(block, job.env)?.line(key) : undefined;
  return line ? fromLines(line) : fromBlock(block);
}

function partyOf(
  facts: BlockFacts | undefined,
  name: string,
  address: readonly string[],
  job: Job,
): Party {
  const word = (key: string) => facts?.line(key)?.word('text') ?? '';
  const country = facts?.line('country') ?? defaultLine(job.env, 'country');
  return {
    name,
    address: [
      ...address,
      ...(facts?.lines('address').flatMap((line) => line.word('text') || []) ?? []),
    ],
    town: word('town'),
    postcode: word('postcode'),
    country: country?.word('country').toUpperCase() ?? '',
    taxNumber: word('tax-number'),
    registration: word('registration'),
    phone: word('phone'),
    email: word('email'),
  };
}

/** Texts of the job's own lines of a word; empty where one is still to be filled in. */
export function jobLines(job: Job, key: string): readonly string[] {
  const block = job.file.blocks.find((b) => b.kind === 'job');
  const facts = block && factsOf(block, job.env);
  return facts?.lines(key).map((line) => line.word(key)) ?? [];
}
