// The picture of the README: a job with its totals, and its wall beside it. `npm run screens -- --view readme --theme light`, then
// out/screens/editor-light.png is copied to client/media/editor.png.

const SIZE = { width: 1400, height: 760 };
/** Without what an editor puts round every file. */
const CLIP = { x: 50, y: 34, width: SIZE.width - 50, height: SIZE.height - 34 };

export default {
  async readme(on) {
    await on.only('garden-wall/job.perp');
    await on.at('width   1010');
    const before = on.page.viewportSize();
    await on.page.setViewportSize(SIZE);
    await on.press('Control+KeyB');
    await on.command('View: Toggle Minimap');
    await on.show('front');
    // What the host tells of itself, cut in half by the edge.
    const hidden = { content: '.statusbar .left-items { visibility: hidden }' };
    const style = await on.page.addStyleTag(hidden);
    await on.page.mouse.move(700, 750);
    await on.rest();
    await on.shot('editor', CLIP);
    await style.evaluate((element) => element.remove());
    await on.command('View: Toggle Minimap');
    await on.press('Control+KeyB');
    await on.page.setViewportSize(before);
  },
};
