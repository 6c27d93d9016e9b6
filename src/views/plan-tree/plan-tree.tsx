/** What is mounted on what, with the worst finding of each part beside it. */
import { useMemo } from 'react';
import type { Finding, Weight } from '../../../geometry';
import { useSolutionStore, useViewStore } from '../../store/use-store';
import { hoverPart, selectPart } from '../../store/view-store';
import { FitMark } from '../../ui/fit-mark';
import { countOf } from '../../ui/numbers';
import { type TreeItem, TreeView } from '../../ui/tree-view';
import { weightTone } from '../findings/weight-tone';
import { type MountingNode, mountingTree } from './mounting-tree';

const WEIGHTS: readonly Weight[] = ['fault', 'caution', 'note'];

function worstOf(
  findings: readonly Finding[],
): { readonly weight: Weight; readonly count: number } | undefined {
  for (const weight of WEIGHTS) {
    const count = findings.filter((finding) => finding.weight === weight).length;
    if (count > 0) return { weight, count };
  }
  return undefined;
}

function itemOf(node: MountingNode, findings: ReadonlyMap<string, readonly Finding[]>): TreeItem {
  const worst = worstOf(findings.get(node.part.id) ?? []);
  return {
    id: node.part.id,
    label: node.part.label,
    detail: `${node.part.spec.maker} ${node.part.spec.model}`,
    mark:
      worst && worst.weight !== 'note' ? (
        <FitMark tone={weightTone(worst.weight)} word={countOf(worst.count, worst.weight)} />
      ) : undefined,
    children: node.guests.map((guest) => itemOf(guest, findings)),
  };
}

export function PlanTree() {
  const scene = useSolutionStore((state) => state.scene);
  const findings = useSolutionStore((state) => state.solution.findings);
  const selected = useViewStore((state) => state.selectedPart);
  const items = useMemo(() => {
    const byPart = new Map<string, Finding[]>();
    for (const finding of findings)
      for (const part of finding.parts) byPart.set(part, [...(byPart.get(part) ?? []), finding]);
    return mountingTree(scene).map((node) => itemOf(node, byPart));
  }, [scene, findings]);
  if (items.length === 0)
    return <p className="empty">Nothing placed yet. Take an enclosure from the shelf.</p>;
  return (
    <TreeView
      label="Parts of the plan"
      items={items}
      selected={selected}
      onSelect={selectPart}
      onHover={hoverPart}
    />
  );
}
