// Why a card is refused: the step of reading at which its first fault was found.

/** The steps of reading a card, in the order in which a reader takes them. */
export type Fault = 'digits-form' | 'version' | 'message' | 'signature' | 'stream' | 'claims';

/** A card that is not shown. The message is for whoever debugs; the reader of the page is told by the fault. */
export class Refusal extends Error {
  constructor(
    readonly fault: Fault,
    message: string,
  ) {
    super(message);
    this.name = 'Refusal';
  }
}
