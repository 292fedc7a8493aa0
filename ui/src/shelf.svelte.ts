// The shelf as the ui knows it: the cars, the one in hand, and what the catalogue offers.

import { keep, kept } from './device';
import { ask, refusalOf } from './door';
import type { Refusal, ShelfView, VehicleLine } from './door/types';

const LAST_CAR = 'car';

class Shelf {
  view = $state.raw<ShelfView>();
  refusal = $state.raw<Refusal>();
  #chosen = $state('');

  /** The car in hand: the one chosen last, or else the first; nothing on an empty shelf. */
  get vehicle(): VehicleLine | undefined {
    const cars = this.view?.vehicles ?? [];
    return cars.find(({ book }) => book === this.#chosen) ?? cars[0];
  }

  /** What its instrument counts. */
  get unit(): string {
    return this.vehicle?.unit ?? 'km';
  }

  /** The day on which its book was handed over here, since when nothing is written in it; nothing where it may be. */
  get handedOver(): string | null {
    return this.vehicle?.handed_over ?? null;
  }

  async load(): Promise<void> {
    try {
      this.#chosen ||= kept<string>(LAST_CAR) ?? '';
      this.view = await ask({ ask: 'shelf' });
      this.refusal = undefined;
    } catch (thrown) {
      this.refusal = refusalOf(thrown);
    }
  }

  choose(book: string): void {
    this.#chosen = book;
    keep(LAST_CAR, book);
  }
}

export const shelf = new Shelf();
