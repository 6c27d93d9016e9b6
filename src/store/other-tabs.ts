/** Word between tabs of this browser that show the same plans. */

export interface PlanNews {
  readonly planId: string;
  /** Undefined when the plan was deleted. */
  readonly revision: number | undefined;
}

export interface TabChannel {
  readonly tell: (news: PlanNews) => void;
  readonly close: () => void;
}

/** Browsers without the channel still cannot overwrite each other: the revision is checked on every save. */
export function joinTabs(onNews: (news: PlanNews) => void): TabChannel {
  if (typeof BroadcastChannel === 'undefined') return { tell: () => {}, close: () => {} };
  const channel = new BroadcastChannel('elbowroom plans');
  channel.onmessage = (event: MessageEvent<PlanNews>) => onNews(event.data);
  return { tell: (news) => channel.postMessage(news), close: () => channel.close() };
}
