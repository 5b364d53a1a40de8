/** Where the page stands in a package of a learning system it is about one exercise, and tells how that went. */
import type { Route } from './route.ts';

export interface PackagedPage {
  readonly title: string;
  /** Where to be instead of elsewhere; the same where the exercise itself is there. */
  routeFor(route: Route): Route;
  /** How the exercise went, 0 to 1; told as often as it is looked at. */
  tell(outcome: number): void;
}

let page: PackagedPage | null = null;

/** Null: the page by itself, with all its doors. */
export function packagedPage(): PackagedPage | null {
  return page;
}

export function standInPackage(packaged: PackagedPage): void {
  page = packaged;
}
