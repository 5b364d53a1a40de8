/** Every kind of item by its maker. */
import type { ItemKind } from '../item/item.ts';
import type { ItemMaker } from '../item/maker.ts';
import { calculationMaker } from './calculation/calculation-maker.ts';
import { causeMaker } from './cause.ts';
import { conductMaker } from './conduct/index.ts';
import { nextCheckMaker } from './next-check.ts';
import { orderMaker } from './order/order-maker.ts';
import { ruledOutMaker } from './ruled-out.ts';
import { whatFollowsMaker } from './what-follows.ts';
import { whereMaker } from './where.ts';

export const MAKERS: Readonly<Record<ItemKind, ItemMaker>> = {
  cause: causeMaker,
  where: whereMaker,
  'next check': nextCheckMaker,
  'ruled out': ruledOutMaker,
  'what follows': whatFollowsMaker,
  order: orderMaker,
  calculation: calculationMaker,
  conduct: conductMaker,
};
