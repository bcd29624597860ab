import { printPlan, showProduct, type Plan } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { ask } from '../../../api/ask';
import { hrefOf } from '../../../api/client';
import { Button } from '../../../ui/button';
import { Facts } from '../../../ui/facts';
import { PaperButton } from '../../../ui/paper-button';
import { PageHeader } from '../../../ui/page-header';
import { Section } from '../../../ui/section';
import { Stack } from '../../../ui/stack';
import { BackToProduct } from '../back-to-product';
import { NextVersion } from '../drafting/next-version';
import { OwnerOnly } from '../owner-only';
import { codeOf } from '@larderbook/messages';
import { useSay } from '../../../ui/voice';
import { useShop } from '../../../api/use-shop';
import { AdoptDialog } from './adopt-dialog';
import { ControlPointView } from './control-point-view';
import { Differences } from './differences';
import { FlowDiagram } from './flow-diagram';
import { HazardAnalysis } from './hazard-analysis';
import { PlanCaution } from './plan-caution';
import { PlanStanding } from './plan-standing';
import { ReassessSection } from './reassess-section';
import { Signature } from './signature';
import { WhatKeeps } from './what-keeps';

export function PlanView({ plan }: { plan: Plan }) {
  const say = useSay('plans');
  const sayProduct = useSay('products');
  const { isOwner } = useShop();
  const { data: product } = useQuery(ask(showProduct, { productId: plan.productId }));
  const [isSigning, setSigning] = useState(false);
  const { content, version } = plan;
  const mayAdopt = isOwner && !plan.adoptedAt && plan.incomplete.length === 0;
  return (
    <Stack gap="wide">
      <Stack>
        <PageHeader
          over={
            <>
              <BackToProduct productId={plan.productId} name={plan.productName} /> · {say('numbered', { version })}
            </>
          }
          title={content.title}
          under={<PlanStanding plan={plan} />}
          actions={
            <>
              {mayAdopt && (
                <Button look="primary" onClick={() => setSigning(true)}>
                  {say('adopt-this')}
                </Button>
              )}
              {isOwner && <NextVersion plan={plan} />}
              <PaperButton href={(language) => hrefOf(printPlan, { planId: plan.planId, language })}>{say('print-the-plan')}</PaperButton>
            </>
          }
        />
        {!isOwner && <OwnerOnly />}
        <Signature plan={plan} />
        <Facts
          facts={[
            { name: say('process'), value: sayProduct(codeOf('process', content.process)) },
            { name: say('intended-use'), value: content.intendedUse },
          ]}
        />
      </Stack>
      <WhatKeeps plan={plan} />
      <ReassessSection plan={plan} />
      <Section title={say('flow-diagram')}>
        <FlowDiagram content={content} />
      </Section>
      <Section title={say('hazard-analysis')}>
        <HazardAnalysis content={content} />
      </Section>
      <Section title={say('control-points')}>
        {content.controlPoints.length === 0 && <p>{say('no-control-point')}</p>}
        {content.controlPoints.map((point) => (
          <ControlPointView key={point.controlPointId} point={point} content={content} />
        ))}
      </Section>
      {content.notes && (
        <Section title={say('notes')}>
          <p>{content.notes}</p>
        </Section>
      )}
      <Differences plan={plan} />
      <PlanCaution />
      {isSigning && <AdoptDialog plan={plan} replaces={product?.planInForce} onClose={() => setSigning(false)} />}
    </Stack>
  );
}
