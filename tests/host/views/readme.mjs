// The picture of the README: a job with its totals, and its wall beside it. `npm run screens -- --view readme --theme light`, then
// out/screens/editor-light.png is copied to client/media/editor.png.
import { settle } from '../themes.mjs';

const SIZE = { width: 1360, height: 720 };
const QUIET = {
  'editor.minimap.enabled': false,
  'workbench.layoutControl.enabled': false,
  'window.title': 'Perpend',
};

export default {
  async readme(on) {
    await on.only('garden-wall/job.perp');
    await on.at('width   1010');
    const before = on.page.viewportSize();
    await on.page.setViewportSize(SIZE);
    await on.press('Control+KeyB');
    settle(on, QUIET);
    await on.show('front');
    await on.line('wall north').scrollIntoViewIfNeeded();
    await on.page.mouse.move(700, 870);
    await on.rest();
    await on.shot('editor');
    settle(on, Object.fromEntries(Object.keys(QUIET).map((key) => [key, undefined])));
    await on.press('Control+KeyB');
    await on.page.setViewportSize(before);
  },
};
