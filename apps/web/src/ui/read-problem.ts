import type { Say, WordsOf } from '@larderbook/messages';

/** `fields` are lines such as "weight: more than the receipt holds (12.4 kg)". */
export type ProblemWords = { title: string; detail?: string; fields: string[] };

type Loose = Record<string, unknown>;
const isLoose = (thing: unknown): thing is Loose => typeof thing === 'object' && thing !== null;
const text = (thing: unknown) => (typeof thing === 'string' && thing !== '' ? thing : undefined);

/** Reads an RFC 9457 problem from an error that carries one as `problem`, or from the body itself. */
export function readProblem(error: unknown, say: Say<WordsOf<'shared'>>): ProblemWords {
  const body = isLoose(error) && isLoose(error.problem) ? error.problem : error;
  if (isLoose(body) && text(body.title)) {
    return {
      title: text(body.title) ?? '',
      detail: text(body.detail),
      fields: fieldLines(body.errors),
    };
  }
  if (isNoConnection(error)) {
    return {
      title: say('no-connection'),
      detail: say('kept-until-connected'),
      fields: [],
    };
  }
  return {
    title: say('page-failed'),
    detail: say('still-kept'),
    fields: [],
  };
}

/** No answer of our server, or a page that could not be fetched: each browser says the latter in words of its own. */
function isNoConnection(error: unknown): boolean {
  if (!(error instanceof TypeError)) return false;
  return error.name === 'NoConnection' || /dynamically imported module|module script failed/i.test(error.message);
}

/** The address names nothing that exists, or half an id was copied. */
export function isMissing(error: unknown): boolean {
  const problem = isLoose(error) && isLoose(error.problem) ? error.problem : undefined;
  return problem?.code === 'not-found' || isAboutAddress(problem?.errors);
}

const isAboutAddress = (errors: unknown): boolean =>
  Array.isArray(errors) && errors.some((each) => isLoose(each) && text(each.pointer)?.startsWith('#/path/'));

function fieldLines(errors: unknown): string[] {
  if (!Array.isArray(errors)) return [];
  return errors.filter(isLoose).flatMap((each) => {
    const said = text(each.detail);
    const where = text(each.pointer)
      ?.replace(/^[#/]+/, '')
      .replaceAll('/', ' ');
    return said ? [where ? `${where}: ${said}` : said] : [];
  });
}
