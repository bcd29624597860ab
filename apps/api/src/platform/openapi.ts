import * as contracts from '@larderbook/contracts';
import { isStream, pathNames, ProblemBody, problems, type RouteShape } from '@larderbook/contracts';
import { allWords } from '@larderbook/messages/all';
import { z } from 'zod';

export function openApi(): object {
  const paths: Record<string, Record<string, object>> = {};
  for (const [name, contract] of Object.entries(contracts)) {
    if (!isRoute(contract)) continue;
    const path = `/api/v1${contract.path.replace(/:(\w+)/g, '{$1}')}`;
    (paths[path] ??= {})[contract.method.toLowerCase()] = operation(name, contract);
  }
  return {
    openapi: '3.1.0',
    info: {
      title: 'Larderbook',
      version: '1',
      description: 'The HACCP record book of a small producer. It keeps records and computes; it does not validate a process.',
    },
    servers: [{ url: '/' }],
    paths,
    components: {
      schemas: { Problem: schema(ProblemBody, 'output') },
      securitySchemes: { session: { type: 'apiKey', in: 'cookie', name: 'larderbook.session_token' } },
    },
  };
}

const isRoute = (value: unknown): value is RouteShape =>
  typeof value === 'object' && value !== null && 'method' in value && 'path' in value && 'returns' in value;

const schema = (type: z.ZodType, io: 'input' | 'output') => z.toJSONSchema(type, { io, unrepresentable: 'any' });

function operation(name: string, contract: RouteShape): object {
  const { returns, query, body } = contract;
  return {
    operationId: name,
    summary: contract.summary,
    'x-roles': contract.roles,
    security: contract.roles === 'anyone' ? [] : [{ session: [] }],
    parameters: [...inPath(contract.path), ...(query ? inQuery(query) : [])],
    ...(body && { requestBody: { required: true, content: { 'application/json': { schema: schema(body, 'input') } } } }),
    responses: {
      200: {
        description: 'Done',
        content: isStream(returns)
          ? { [returns.stream]: { schema: { type: 'string', format: 'binary' } } }
          : { 'application/json': { schema: schema(returns, 'output') } },
      },
      ...problemResponses(contract),
    },
  };
}

const inPath = (path: string) =>
  pathNames(path).map((name) => ({ name, in: 'path', required: true, schema: { type: 'string', format: 'uuid' } }));

const inQuery = (query: z.ZodObject) =>
  Object.entries(query.shape).map(([name, type]) => ({
    name,
    in: 'query',
    required: !(type as z.ZodType).safeParse(undefined).success,
    schema: schema(type as z.ZodType, 'input'),
  }));

function problemResponses({ problems: named, roles }: RouteShape): Record<string, object> {
  const codes = ['invalid-input' as const, ...(roles === 'anyone' ? [] : (['not-signed-in', 'not-allowed'] as const)), ...named];
  const statuses = new Set<number>(codes.map((code) => problems[code]));
  return Object.fromEntries(
    [...statuses].map((status) => [
      status,
      {
        description: codes
          .filter((code) => problems[code] === status)
          .map((code) => `${code}: ${allWords.problems.en[code]}`)
          .join('\n'),
        content: { 'application/problem+json': { schema: { $ref: '#/components/schemas/Problem' } } },
      },
    ]),
  );
}
