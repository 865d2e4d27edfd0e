/** What perpend jobs --rates --json prints. Its shape is promised in shared/json-schema. */
import { isEnough, type MeasuredOutput } from '../../engine/firm/outputs';
import { enoughIn } from '../../engine/firm/rates';
import type { Env } from '../../engine/resolve/env';
import { ratesNow } from '../show/outputs';
import { VERSION } from '../version';

export function outputsDocument(
  measured: readonly MeasuredOutput[],
  envs: readonly Env[],
  folder: string,
): string {
  const [env] = envs;
  const enough = env && enoughIn(env);
  const document = {
    $schema: 'perpend-1.schema.json',
    format: 'perpend-outputs',
    version: 1,
    tool: { name: 'perpend', version: VERSION },
    folder,
    enough,
    outputs: measured.map((m) => ({
      ...m,
      enough: enough !== undefined && isEnough(m, enough),
      now: ratesNow(m, envs).map(({ low, high }) => ({ low, high })),
    })),
  };
  return `${JSON.stringify(document)}\n`;
}
