// What the editor asks for us, one question after the other.
import { choose } from '../workbench.mjs';

const JOB = 'garden-wall/job.perp';

async function ask(on, title, shows) {
  await on.away();
  await on.command(`Perpend: ${title}`);
  await on.page.locator('.quick-input-widget', { hasText: shows }).waitFor({ timeout: 60_000 });
  await on.rest(0.5);
}

export default {
  async questions(on) {
    await on.only(JOB);
    await ask(on, 'New Job…', 'Garden wall');
    await on.shot('new');
    await choose(on.page, 'Garden wall');
    await on.rest();
    await on.shot('new-answer');
    await ask(on, 'Save a Paper, Page or Drawing', 'For the client');
    await on.shot('save');
    await choose(on.page, 'Quote');
    await on.rest();
    await on.shot('save-form');
    await ask(on, 'Write into the Record', 'worked');
    await on.shot('record');
    await choose(on.page, 'worked');
    await on.press('Enter');
    await on.rest();
    await on.page.keyboard.type('two people');
    await on.press('Enter');
    await on.rest();
    await on.shot('record-wrong');
    await ask(on, 'Copy for a Partner Firm', '');
    await on.rest();
    await on.shot('share');
    await ask(on, 'Open an Example', 'wall');
    await on.shot('examples');
    await on.away();
  },
};
