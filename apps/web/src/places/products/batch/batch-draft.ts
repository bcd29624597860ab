import { planBatch } from '@larderbook/contracts';
import type { MassUnit } from '@larderbook/haccp';
import type { z } from 'zod';
import { check } from '../../../api/check';
import { numberOf } from '../../../ui/keypad-text';
import type { Say, WordsOf } from '@larderbook/messages';

type Asked = z.output<typeof planBatch.body>;

export type BatchDraft = {
  from: 'meat' | 'packages';
  trimmed: string;
  trimmedUnit: MassUnit;
  packages: string;
  net: string;
  netUnit: MassUnit;
};

export function checkBatch(draft: BatchDraft, say: Say<WordsOf<'batches'>>): { value?: Asked; errors?: Record<string, string> } {
  const [trimmed, net, packages] = [numberOf(draft.trimmed), numberOf(draft.net), numberOf(draft.packages)];
  const missing = {
    ...(draft.from === 'meat' && trimmed === undefined && { trimmed: say('trimmed-missing') }),
    ...(draft.from === 'packages' && packages === undefined && { packages: say('packages-missing') }),
    ...(draft.from === 'packages' && net === undefined && { net: say('net-missing') }),
  };
  if (Object.keys(missing).length > 0) return { errors: missing };
  const [ofMeat, ofPackages] = planBatch.body.options;
  const checked =
    draft.from === 'meat'
      ? check(ofMeat, { trimmedMeat: { value: trimmed, unit: draft.trimmedUnit } })
      : check(ofPackages, { packages, net: { value: net, unit: draft.netUnit } });
  if (checked.value) return { value: checked.value };
  const { errors = {} } = checked;
  const { 'trimmedMeat.value': ofTrimmed = '', packages: ofCount = '', 'net.value': ofNet = '' } = errors;
  return { errors: { trimmed: ofTrimmed, packages: ofCount, net: ofNet } };
}
