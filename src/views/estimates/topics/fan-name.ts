import type { FanPoint } from '../../../../geometry';

/** 'Fan 1', or 'Card, fan 2' where a part has several. */
export function fanName(fans: readonly FanPoint[], fan: FanPoint): string {
  const alike = fans.filter(({ part }) => part === fan.part);
  return alike.length === 1 ? fan.label : `${fan.label}, fan ${alike.indexOf(fan) + 1}`;
}
