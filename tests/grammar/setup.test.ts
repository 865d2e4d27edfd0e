import { expect, test } from 'vitest';
import { checkRules } from '../../grammar/parser';
import { makeLexer } from '../../grammar/tokens';

// What ships skips these checks: they would take longer than reading a job.
test('the tokens pass the lexer generator’s own checks, with every one optimised by its first character', () => {
  expect(makeLexer(true).lexerDefinitionErrors).toEqual([]);
});

test('the rules of a line pass the parser generator’s own checks', () => {
  expect(checkRules).not.toThrow();
});
