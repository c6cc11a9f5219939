/** The worker that looks for typed numbers of an open pattern that could be figures. It holds nothing. */
import { Node } from 'prosemirror-model';
import { project } from '../../core/document/project.ts';
import { schema } from '../../core/document/schema.ts';
import { offersIn } from '../../core/intake/offers.ts';
import { study } from '../../core/study/index.ts';

self.onmessage = ({ data }: MessageEvent<unknown>): void => {
  self.postMessage(offersIn(study(project(Node.fromJSON(schema, data)))));
};
