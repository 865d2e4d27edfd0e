// The text as it is read: totals at the ends of the lines, ways over the headings, what a pointer is told.
import { hoverOnHeading } from '../workbench.mjs';

const JOB = 'garden-wall/job.perp';

export default {
  async text(on) {
    await on.only(JOB);
    await on.shot('text');
  },
  async ranges(on) {
    await on.only('repair/job.perp');
    await on.shot('ranges');
  },
  async hover(on) {
    await on.only(JOB);
    await hoverOnHeading(on.page, 'wall');
    await on.rest();
    await on.shot('hover');
    await on.away();
    await on.line('bond').hover({ position: { x: 30, y: 8 } });
    await on.rest(2);
    await on.shot('hover-bond');
    await on.away();
  },
  async outline(on) {
    await on.only(JOB);
    await on.at('width   1010');
    await on.command('Explorer: Focus on Outline View');
    await on.rest();
    await on.shot('outline');
    await on.page.locator('.breadcrumbs-control .monaco-breadcrumb-item').last().click();
    await on.rest();
    await on.shot('breadcrumbs');
    await on.away();
  },
};
