import { type RunnerTestCase, TestRunner, test } from "vitest";

type Import = Parameters<TestRunner["importFile"]>;

/** Once a test has failed the mutant is killed, and no further file is read; a file that cannot be read has failed too. */
export default class StopAtFailure extends TestRunner {
  private hasFailed = false;

  override async importFile(...[path, source]: Import): Promise<unknown> {
    if (this.hasFailed && source === "collect") return undefined;
    try {
      return await super.importFile(path, source);
    } catch (error) {
      if (source === "setup") throw error;
      return test("the file can be read", () => {
        throw error;
      });
    }
  }

  override onAfterRunTask(task: RunnerTestCase): void {
    super.onAfterRunTask(task);
    if (task.result?.state !== "fail") return;
    this.hasFailed = true;
    this.cancel("test-failure");
  }
}
