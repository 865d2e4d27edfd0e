// What helps while a line is written, and what is found in it.
import { openProblems } from '../workbench.mjs';

const JOB = 'garden-wall/job.perp';

async function newLine(on, after, text) {
  await on.only(JOB);
  await on.at(after);
  await on.press('Enter');
  await on.page.keyboard.type(text, { delay: 20 });
}

export default {
  async completion(on) {
    await newLine(on, 'exposure', '');
    await on.press('Control+Space');
    await on.page.locator('.suggest-widget .monaco-list-row').first().waitFor();
    await on.rest();
    await on.shot('completion');
    await on.away();
    await on.page.keyboard.type('bond ', { delay: 40 });
    await on.press('Control+Space');
    await on.rest();
    await on.shot('completion-names');
  },
  async signature(on) {
    await newLine(on, 'bond', 'footing 450 ');
    await on.press('Escape', 'Control+Shift+Space');
    await on.page.locator('.parameter-hints-widget.visible').waitFor({ timeout: 30_000 });
    await on.rest();
    await on.shot('signature');
  },
  async problems(on) {
    await newLine(on, 'bond', 'lenght 7.3 m');
    await on.away();
    await openProblems(on.page);
    await on.rest();
    await on.shot('problems');
  },
  async fixes(on) {
    await on.only(JOB);
    await on.at('opening gate');
    await on.press('Alt+F8'); // the next finding
    await on.rest();
    await on.shot('finding');
    await on.press('Escape', 'Control+Period');
    await on.page.locator('.action-widget .monaco-list-row').first().waitFor({ timeout: 30_000 });
    await on.rest();
    await on.shot('fixes');
  },
};
