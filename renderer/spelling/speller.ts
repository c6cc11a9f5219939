/** The page's side of the spelling: starts the worker when it is first needed, asks it, hands out its answers. */
import type { Terms } from '../../core/trade/stitches.ts';
import type { FromSpeller, TextToSpell, ToSpeller, WordAt } from './protocol.ts';

export class Speller {
  #worker: Worker | null = null;
  #serial = 0;
  readonly #waiting = new Map<number, (message: FromSpeller) => void>();

  /** Sets the language and the words that are right besides the dictionary's, in lower case. */
  learn(terms: Terms, known: readonly string[]): void {
    this.#tell({ kind: 'language', terms, known });
  }

  /** For each text, the words that are not known. */
  async check(texts: readonly TextToSpell[]): Promise<readonly (readonly WordAt[])[]> {
    const answer = await this.#ask((serial) => ({ kind: 'check', serial, texts }));
    return answer.kind === 'checked' ? answer.wrong : [];
  }

  /** Words that may have been meant. */
  async suggest(word: string): Promise<readonly string[]> {
    const answer = await this.#ask((serial) => ({ kind: 'suggest', serial, word }));
    return answer.kind === 'suggested' ? answer.words : [];
  }

  stop(): void {
    this.#worker?.terminate();
    this.#worker = null;
    this.#waiting.clear();
  }

  #ask(message: (serial: number) => ToSpeller): Promise<FromSpeller> {
    this.#serial += 1;
    const serial = this.#serial;
    return new Promise((answer) => {
      this.#waiting.set(serial, answer);
      this.#tell(message(serial));
    });
  }

  #tell(message: ToSpeller): void {
    if (this.#worker === null) {
      this.#worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
      this.#worker.onmessage = ({ data }: MessageEvent<FromSpeller>) => {
        this.#waiting.get(data.serial)?.(data);
        this.#waiting.delete(data.serial);
      };
    }
    this.#worker.postMessage(message);
  }
}
