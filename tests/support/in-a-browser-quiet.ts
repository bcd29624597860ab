import { expect, test as base, type BrowserContext } from '@playwright/test';

type Quiet = {
  /** What the browser's console may complain of in a test, because it is what the test is about. Otherwise nothing. */
  mayLog: RegExp;
  /** Listens to another tablet as well; the test's own is listened to from the beginning. */
  listenTo(tablet: BrowserContext): void;
};

/** Tests in a browser whose console stays empty: no failed request, nothing forbidden to the page, no error of ours. */
export const test = base.extend<Quiet>({
  mayLog: [/(?!)/, { option: true }],
  listenTo: [
    async ({ context, mayLog }, use) => {
      const said: string[] = [];
      const note = (words: string) => {
        if (!mayLog.test(words)) said.push(words);
      };
      const listenTo = (tablet: BrowserContext) => {
        tablet.on('console', (message) => {
          if (message.type() === 'error') note(`${message.text()} (${message.location().url})`);
        });
        tablet.on('weberror', (failure) => note(String(failure.error())));
      };
      listenTo(context);
      await use(listenTo);
      expect(said, 'errors in the console of the browser').toEqual([]);
    },
    { auto: true },
  ],
});
