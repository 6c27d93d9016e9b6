/** Keeps the chain of dimensions in the drawing up with the card that is open, and takes it away with the card. */
import { useEffect, useMemo } from 'react';
import { pointAtDimension, showChain } from '../../store/chain-store';
import { usePlanStore } from '../../store/use-store';
import { useStudyAnswer } from '../../store/use-study-answer';

export function ChainOfCard({ clearance }: { readonly clearance: string }) {
  const plan = usePlanStore((state) => state.plan);
  const request = useMemo(() => ({ topic: 'chain', plan, clearance }) as const, [plan, clearance]);
  const { answer, busy } = useStudyAnswer(request);
  useEffect(() => showChain(busy ? undefined : answer), [answer, busy]);
  useEffect(
    () => () => {
      showChain(undefined);
      pointAtDimension(undefined);
    },
    [],
  );
  return null;
}
