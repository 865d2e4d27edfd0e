import { beforeEach, describe, expect, test, vi } from 'vitest';
import { sayAsides, unlessRefused } from '../../client/asking';
import { sayWritten } from '../../client/papers/written';
import { unlinked } from '../../client/unlinked';
import { forget, seen, Uri } from './vscode';

vi.mock('vscode', () => import('./vscode'));
beforeEach(forget);

/** What an editor takes for a link in a message: `linkedText.ts` of microsoft/vscode. */
const LINK = /\[([^\]]+)\]\(((?:https?:\/\/|command:|file:)[^)\s]+)(?: (["'])(.+?)(\3))?\)/gi;
const EVIL = '[go](command:workbench.action.closeWindow)';

test.each([EVIL, `a ${EVIL}${EVIL}`, '[a](https://a.example "b")', '[a](file:///x)'])(
  '%s is a link, and none any more',
  (text) => {
    expect(text.match(LINK)).not.toBeNull();
    expect(unlinked(text).match(LINK)).toBeNull();
    expect(unlinked(unlinked(text))).toBe(unlinked(text));
  },
);

describe('words of a job in a message', () => {
  test.each([
    ['what was refused', () => unlessRefused({ refused: `no ${EVIL}` })],
    ['what should be known', () => sayAsides([`lacks ${EVIL}`])],
    ['the name of a file', () => sayWritten(Uri.file(`/jobs/${EVIL}.pdf`) as never)],
  ])('%s: no link', async (_, say) => {
    await say();
    expect(seen.messages).toHaveLength(1);
    expect(seen.messages[0]!.match(LINK)).toBeNull();
    expect(seen.messages[0]).toContain('[go] (command:');
  });
});
