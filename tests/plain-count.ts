import type { Reporter, TestModule } from 'vitest/node';

/** Ends a run with one plain line that any machine can read: "812 passed, 0 failed". */
export default class PlainCount implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], unhandled: readonly unknown[]): void {
    const count = { passed: 0, failed: unhandled.length, skipped: 0 };
    for (const module of modules) {
      if (module.state() === 'failed' && [...module.children.allTests()].length === 0) count.failed += 1;
      for (const test of module.children.allTests()) {
        const { state } = test.result();
        if (state !== 'pending') count[state] += 1;
      }
    }
    const skipped = count.skipped > 0 ? `, ${count.skipped} skipped` : '';
    process.stdout.write(`\n${count.passed} passed, ${count.failed} failed${skipped}\n`);
  }
}
