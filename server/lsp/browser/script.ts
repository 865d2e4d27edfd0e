/** Runs a CommonJS script of our own in this worker, and gives what it exports. */
declare const self: DedicatedWorkerGlobalScope & {
  perpendScript?: (module: Module, exports: unknown) => void;
};

interface Module {
  exports: unknown;
}

/** As a script by its address, which the content policies of editors let through where they stop `eval`. */
export function evaluated(script: Uint8Array<ArrayBuffer>): unknown {
  const head = 'self.perpendScript=function(module,exports){';
  const address = URL.createObjectURL(new Blob([head, script, '\n}'], { type: 'text/javascript' }));
  try {
    self.importScripts(address);
  } finally {
    URL.revokeObjectURL(address);
  }
  const module: Module = { exports: {} };
  self.perpendScript?.(module, module.exports);
  return module.exports;
}
