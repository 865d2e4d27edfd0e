// node .scripts/icon.mjs: the extension's icon, client/media/icon.png, from the drawing beside it.
import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { startBrowser } from '../tests/host/browser.mjs';
import { root } from './bundles.mjs';
import { withPalette } from './png.mjs';

const file = (ending) => path.join(root, `client/media/icon.${ending}`);

const { page, stop } = await startBrowser();
try {
  await page.setContent(`<style>body{margin:0}</style>${readFileSync(file('svg'), 'utf8')}`);
  const picture = await page.locator('svg').screenshot({ omitBackground: true });
  writeFileSync(file('png'), withPalette(picture));
} finally {
  await stop();
}
