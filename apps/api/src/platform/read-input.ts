import { faultOf, pathNames, type RouteShape } from '@larderbook/contracts';
import { z } from 'zod';
import { Problem, type Located } from './problem';
import { told } from './told';

type Asked = { params?: unknown; query?: unknown; body?: unknown };

/** Throws `invalid-input` with every fault. */
export function readInput(contract: RouteShape, asked: Asked): Record<string, unknown> {
  const faults: Located[] = [];
  const read = (schema: z.ZodType | undefined, given: unknown, where: string): object => {
    if (!schema) return {};
    faults.push(...unstorable(given, where));
    const result = schema.safeParse(given ?? {});
    if (result.success) return result.data as object;
    faults.push(...result.error.issues.map((issue) => ({ pointer: pointer(where, issue.path), ...faultOf(issue) })));
    return {};
  };

  const input = {
    ...read(paramsOf(contract.path), asked.params, '#/path'),
    ...read(contract.query, asked.query, '#/query'),
    ...read(contract.body, asked.body, '#'),
  };
  if (faults.length > 0) throw new Problem('invalid-input', faults.slice(0, 1), faults);
  return input;
}

const idsIn = new Map<string, z.ZodType>();

/** Made once per path: zod takes longer to make a schema than to use it. */
function paramsOf(path: string): z.ZodType {
  const ids = () => z.object(Object.fromEntries(pathNames(path).map((name) => [name, z.uuid().toLowerCase()])));
  const made = idsIn.get(path) ?? ids();
  idsIn.set(path, made);
  return made;
}

const pointer = (where: string, path: PropertyKey[]) =>
  [where, ...path.map((part) => String(part).replaceAll('~', '~0').replaceAll('/', '~1'))].join('/');

/** No request of ours is nested nearly as deep. */
const deepest = 24;

/** PostgreSQL or canonical JSON cannot hold NUL, lone surrogates or unlimited nesting. */
function unstorable(given: unknown, where: string, depth = 0): Located[] {
  if (depth > deepest) return [{ pointer: where, ...told('too-deep') }];
  if (typeof given === 'string') {
    return given.includes('\u0000') || !given.isWellFormed() ? [{ pointer: where, ...told('cannot-be-kept') }] : [];
  }
  if (typeof given !== 'object' || given === null) return [];
  return Object.entries(given).flatMap(([name, value]) => unstorable(value, pointer(where, [name]), depth + 1));
}
