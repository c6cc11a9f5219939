/** Draws the photographs of the manuscript: those between rows, and the one on the cover. */
import type { Node } from 'prosemirror-model';
import { type EditorState, NodeSelection, Plugin } from 'prosemirror-state';
import { Decoration, DecorationSet, type EditorView, type NodeView } from 'prosemirror-view';
import type { Media } from '../../core/document/pattern.ts';
import { setPart } from '../desk/edits.ts';
import { partAt } from '../desk/places.ts';
import type { Studio } from '../shell/studio.ts';
import { photoWords } from '../words/photos.ts';
import { moveItem } from '../write/commands/move.ts';
import { asideButton } from '../write/drawing/element.ts';
import { PhotoFrame } from './frame.ts';
import { choosePhotographs } from './picker.ts';

class PhotoView implements NodeView {
  readonly dom: HTMLElement;
  readonly #frame: PhotoFrame;

  constructor(node: Node, view: EditorView, getPos: () => number | undefined, studio: Studio) {
    const at = (act: (pos: number) => void) => () => {
      const pos = getPos();
      if (pos !== undefined) act(pos);
    };
    this.#frame = new PhotoFrame(node.attrs.media, photoWords.photograph, {
      pictures: () => studio.view().desk?.view().pictures ?? new Map(),
      mayChange: () => view.editable,
      onChange: (media) => at((pos) => view.dispatch(view.state.tr.setNodeAttribute(pos, 'media', media)))(),
      onMove: (by) =>
        at((pos) => {
          view.dispatch(view.state.tr.setSelection(NodeSelection.create(view.state.doc, pos)));
          moveItem(by)(view.state, view.dispatch, view);
        })(),
      onRemove: at((pos) => {
        view.dispatch(view.state.tr.delete(pos, pos + 1));
        view.focus();
      }),
    });
    this.dom = this.#frame.dom;
    this.dom.classList.add('photo');
  }

  update(node: Node): boolean {
    if (node.type.name !== 'photo') return false;
    this.#frame.show(node.attrs.media);
    return true;
  }

  stopEvent(event: Event): boolean {
    return isOwn(event);
  }

  ignoreMutation(): boolean {
    return true;
  }

  destroy(): void {
    this.#frame.destroy();
  }
}

/** Keys and presses in fields and buttons are theirs, not the editor's. */
const isOwn = (event: Event): boolean =>
  event.target instanceof Element && event.target.closest('input, textarea, button, label') !== null;

export function photographs(studio: Studio): Plugin {
  const frames = new WeakMap<globalThis.Node, PhotoFrame>();
  const setCover = (view: EditorView, cover: Media | null) =>
    view.dispatch(setPart<'cover'>(view.state, ['cover'], { cover }));
  const drawn = (view: EditorView, cover: Media): HTMLElement => {
    const frame = new PhotoFrame(cover, photoWords.cover, {
      pictures: () => studio.view().desk?.view().pictures ?? new Map(),
      mayChange: () => view.editable,
      onChange: (media) => setCover(view, media),
      onMove: null,
      onRemove: () => {
        setCover(view, null);
        view.focus();
      },
    });
    frame.dom.classList.add('photo', 'on-cover');
    frames.set(frame.dom, frame);
    return frame.dom;
  };
  const button = (view: EditorView): HTMLElement =>
    asideButton('add first', photoWords.addCover, () => {
      if (view.editable) choosePhotographs(view, studio, { onCover: true });
    });
  let kept: { readonly cover: Media | null; readonly end: number; readonly set: DecorationSet } | null = null;
  const decorations = (state: EditorState): DecorationSet => {
    const { node, pos } = partAt(state.doc, ['cover']);
    const cover: Media | null = node.attrs.cover;
    const end = pos + node.nodeSize - 1;
    if (kept !== null && kept.cover === cover && kept.end === end) return kept.set;
    const widget = Decoration.widget(end, (view) => (cover === null ? button(view) : drawn(view, cover)), {
      // The same frame stays while its picture does, so that the field being typed in keeps the focus.
      key: cover === null ? 'no-cover' : `cover-${cover.id}`,
      side: 1,
      ignoreSelection: true,
      stopEvent: isOwn,
      destroy: (dom) => frames.get(dom)?.destroy(),
    });
    kept = { cover, end, set: DecorationSet.create(state.doc, [widget]) };
    return kept.set;
  };
  return new Plugin({
    props: {
      decorations,
      nodeViews: {
        photo: (node, view, getPos) => new PhotoView(node, view, getPos, studio),
      },
    },
    view: () => ({
      update: (view) => {
        const cover: Media | null = partAt(view.state.doc, ['cover']).node.attrs.cover;
        const dom = view.dom.querySelector('.photo.on-cover');
        const frame = dom === null ? undefined : frames.get(dom);
        if (cover !== null && frame !== undefined && frame.media !== cover) frame.show(cover);
      },
    }),
  });
}
