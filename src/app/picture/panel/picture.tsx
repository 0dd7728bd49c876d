/** The picture beside the chapters: a canvas with its few tools, what is under the pointer in words, and what its lines mean. */
import { type ReactNode, useEffect, useId, useLayoutEffect, useMemo, useRef, useState } from 'react';
import { useWords } from '../../words/use-words.ts';
import type { Words } from '../../words/words-for.ts';
import type { Chapter, DeviationView, FindingView, PictureView, ProgramView, ShapeSizeView } from '../../work/views.ts';
import { type Lengths, lengthsIn } from '../lengths.ts';
import { marksOf } from '../marks.ts';
import { listen } from '../paint/pointing.ts';
import { type Hovered, Stage, type StageEvents } from '../paint/stage.ts';
import type { SnapKind } from '../places-index.ts';
import { decimalsAt, measured, type PictureUnit } from '../scale-bar.ts';
import { groundOf, type PictureGround, type Upon } from '../scene.ts';
import type { Picked, Tool } from '../tool.ts';
import { saidOf } from '../what-is-here.ts';
import { Legend } from './legend.tsx';
import { useColours } from './use-colours.ts';
import './picture.css';

/** A place or rectangle that somebody waits for; `prompt` says which. */
export interface Picking {
  readonly wanted: 'place' | 'rectangle';
  readonly prompt: string;
}

/** How far the program is replayed in the picture. */
interface Replayed {
  /** The program's moves, for the replay and to find the block of a place. */
  readonly moves?: ProgramView['moves'] | undefined;
  /** Width the wire burns, mm. */
  readonly kerf?: number | undefined;
  /** So many moves are done; nothing is replayed when left out. */
  readonly cutUpTo?: number | undefined;
  /** Where the wire is, mm. */
  readonly wire?: { readonly x: number; readonly y: number; readonly kerf: number } | undefined;
  /** Contours whose slug is out. */
  readonly fallen?: readonly string[] | undefined;
  readonly currentBlock?: number | undefined;
}

/** What is done with the picture. */
interface PictureHandlers {
  readonly onChoose: (owner: string | undefined) => void;
  readonly onPoint: (id: string | undefined) => void;
  /** The mark of a finding was clicked. */
  readonly onMark?: ((finding: string) => void) | undefined;
  readonly onBlock?: ((block: number) => void) | undefined;
  readonly onPicked?: ((what: Picked) => void) | undefined;
  /** Picking was given up by Escape or its button. */
  readonly onPickingEnded?: (() => void) | undefined;
}

export interface PictureProps extends Replayed, PictureHandlers {
  readonly picture?: PictureView | undefined;
  /** The chapter in view: decides what is shown. */
  readonly chapter: Chapter;
  readonly findings: readonly FindingView[];
  readonly lengthUnit: PictureUnit;
  /** Id of a contour or open line. */
  readonly chosen?: string | undefined;
  /** Id of a finding or contour pointed at, here or in the margin. */
  readonly pointed?: string | undefined;
  /** Of every contour that was proven; shown in the chapter of the proof. */
  readonly deviations?: readonly DeviationView[] | undefined;
  /** Allowed either side, mm. */
  readonly tolerance?: number | undefined;
  /** Sizes of a part by numbers; drawn in the chapter of the drawing. */
  readonly sizes?: readonly ShapeSizeView[] | undefined;
  readonly picking?: Picking | undefined;
}

const NONE: readonly never[] = [];

export const Picture = (props: PictureProps): ReactNode => {
  const words = useWords().picture;
  const lengths = useMemo(() => lengthsIn(props.lengthUnit), [props.lengthUnit]);
  const canvas = useRef<HTMLCanvasElement>(null);
  const [hovered, setHovered] = useState<Hovered | undefined>();
  const [tool, setTool] = useState<Tool>({ kind: 'none' });
  const [scale, setScale] = useState(1);
  const at = useRef<HTMLSpanElement>(null);
  const { colours, printing } = useColours();
  const ground = useGround(props, lengths);
  const stage = useStage(canvas, props, { setHovered, setTool, setScale, tellAt: (text) => at.current?.replaceChildren(text), lengths });
  useShown(stage, props, ground);
  usePicking(stage, tool, props);
  // Paper waits for no frame: what is printed is painted before the effect is over.
  useLayoutEffect(() => {
    stage.current?.dress(colours, getComputedStyle(document.body).fontFamily || 'sans-serif', printing);
  }, [stage, colours, printing]);
  const help = useId();
  const contours = useMemo(() => new Map((props.picture?.contours ?? []).map((c) => [c.id, c])), [props.picture]);
  const said = hovered === undefined ? '' : (hovered.mark?.sentence ?? saidOf(hovered.here, contours, lengths, words));
  return (
    <figure className="picture">
      <Tools stage={stage} tool={tool} />
      <div className="picture-frame">
        {/* biome-ignore lint/a11y/noInteractiveElementToNoninteractiveRole: an application of its own, with keys to move, zoom and measure */}
        <canvas
          ref={canvas}
          className={tool.kind === 'none' ? 'picture-canvas' : 'picture-canvas taking'}
          role="application"
          aria-label={words.canvas}
          aria-describedby={help}
          tabIndex={0}
        />
        <p id={help} className="picture-help">
          {words.help}
        </p>
        <span className="picture-at" ref={at} />
        <output className="picture-said" aria-live="polite">
          {toolSaid(tool, lengths, props.picking, words)}
        </output>
        {props.picture === undefined && <p className="picture-empty">{words.empty}</p>}
        {said !== '' && hovered !== undefined && <Tip text={said} hovered={hovered} frame={canvas.current} />}
      </div>
      {ground !== undefined && (
        <Legend
          ground={ground}
          colours={colours}
          scale={scale}
          marked={marksOf(props.findings, props.chapter).length > 0}
          replayed={props.cutUpTo !== undefined}
        />
      )}
    </figure>
  );
};

type StageRef = { readonly current: Stage | null };

const useGround = ({ picture, chapter, deviations = NONE, tolerance = 0 }: PictureProps, lengths: Lengths): PictureGround | undefined =>
  useMemo(
    () => (picture === undefined ? undefined : groundOf(picture, chapter, deviations, tolerance, lengths)),
    [picture, chapter, deviations, tolerance, lengths],
  );

interface Tellers {
  readonly setHovered: (what: Hovered | undefined) => void;
  readonly setTool: (tool: Tool) => void;
  readonly setScale: (scale: number) => void;
  readonly tellAt: (text: string) => void;
  readonly lengths: Lengths;
}

/** Makes the stage once; what it tells reaches the newest props. */
const useStage = (canvas: { readonly current: HTMLCanvasElement | null }, props: PictureProps, tellers: Tellers): StageRef => {
  const words = useWords().picture;
  const stage = useRef<Stage | null>(null);
  const newest = useRef({ props, tellers, words });
  newest.current = { props, tellers, words };
  useLayoutEffect(() => {
    const element = canvas.current;
    if (element === null) return;
    const made = new Stage(element, eventsOf(newest));
    stage.current = made;
    const unlisten = listen(element, made);
    const measure = (): void => made.resize({ width: element.clientWidth, height: element.clientHeight }, devicePixelRatio || 1);
    const watcher = new ResizeObserver(measure);
    watcher.observe(element);
    measure();
    return () => {
      watcher.disconnect();
      unlisten();
      made.stop();
      stage.current = null;
    };
  }, [canvas]);
  return stage;
};

interface Newest {
  readonly props: PictureProps;
  readonly tellers: Tellers;
  readonly words: Words['picture'];
}

const eventsOf = (newest: { readonly current: Newest }): StageEvents => {
  let pointed: string | undefined;
  let hoveredText = '';
  return {
    hovered: (what) => {
      const { props, tellers } = newest.current;
      const id = what?.mark?.id;
      if (id !== pointed) props.onPoint(id);
      pointed = id;
      const text =
        what === undefined
          ? ''
          : `${id ?? JSON.stringify([what.here.kind, 'owner' in what.here ? what.here.owner : '', what.here.kind === 'line' ? [what.here.layer.role, what.here.layer.pass] : ''])} ${Math.round(what.pixel.x / 4)} ${Math.round(what.pixel.y / 4)}`;
      if (text !== hoveredText) tellers.setHovered(what);
      hoveredText = text;
    },
    at: (snap, scale) => {
      const { tellers, words } = newest.current;
      const { tellAt, lengths } = tellers;
      if (snap === undefined) return tellAt('');
      const decimals = decimalsAt(scale, lengths.unit);
      const kind: SnapKind = snap.kind;
      const place = words.coordinates(lengths.bare(snap.at.x, decimals), lengths.bare(snap.at.y, decimals));
      tellAt(kind === 'free' ? place : `${place} · ${words.snapNames[kind]}`);
    },
    clicked: (here, mark, block) => {
      const { props } = newest.current;
      if (mark !== undefined) {
        props.onPoint(mark.id);
        return props.onMark?.(mark.id);
      }
      if (block !== undefined) props.onBlock?.(block);
      props.onChoose(here.kind === 'nothing' ? undefined : here.owner);
    },
    tool: (tool) => newest.current.tellers.setTool(tool),
    picked: (what) => newest.current.props.onPicked?.(what),
    scaled: (scale) => newest.current.tellers.setScale(scale),
  };
};

const useShown = (stage: StageRef, props: PictureProps, ground: PictureGround | undefined): void => {
  const words = useWords().picture;
  const { findings, chapter, pointed, chosen, moves, kerf = 0, cutUpTo, wire, fallen = NONE, currentBlock, sizes = NONE } = props;
  const takings = chapter === 'drawing' ? sizes : NONE;
  const marks = useMemo(() => marksOf(findings, chapter, pointed), [findings, chapter, pointed]);
  useEffect(() => {
    const upon: Upon = {
      marks,
      chosen,
      pointed,
      moves,
      cutUpTo,
      kerf,
      wire,
      currentBlock,
      fallen,
      datumWord: words.datum,
      snapWords: words.snapNames,
      takings,
    };
    stage.current?.show(ground, upon);
  }, [stage, ground, marks, chosen, pointed, moves, cutUpTo, kerf, wire, currentBlock, fallen, takings, words]);
  useEffect(() => {
    const at = findings.find((f) => f.id === pointed)?.at;
    if (at !== undefined) stage.current?.reveal(at);
  }, [stage, findings, pointed]);
};

/** Takes up the tool of picking when somebody waits for a place, and tells when it was laid down without one. */
const usePicking = (stage: StageRef, tool: Tool, { picking, onPickingEnded }: PictureProps): void => {
  const picks = useRef(false);
  const wanted = picking?.wanted;
  useEffect(() => {
    if (wanted === undefined) {
      if (picks.current) stage.current?.take({ kind: 'none' });
      picks.current = false;
      return;
    }
    picks.current = true;
    stage.current?.take({ kind: 'pick', wanted });
    stage.current?.focus();
  }, [stage, wanted]);
  const ended = useRef(onPickingEnded);
  ended.current = onPickingEnded;
  useEffect(() => {
    if (tool.kind === 'pick' || !picks.current) return;
    if (stage.current?.tool.kind === 'pick') return;
    picks.current = false;
    ended.current?.();
  }, [stage, tool]);
};

interface ToolsProps {
  readonly stage: StageRef;
  readonly tool: Tool;
}

const Tools = ({ stage, tool }: ToolsProps): ReactNode => {
  const words = useWords().picture;
  const measures = tool.kind === 'measure';
  return (
    <div className="picture-tools">
      <button type="button" onClick={() => stage.current?.fit()}>
        {words.fit}
      </button>
      <button type="button" onClick={() => stage.current?.zoom(1.5)}>
        {words.closer}
      </button>
      <button type="button" onClick={() => stage.current?.zoom(1 / 1.5)}>
        {words.farther}
      </button>
      <button type="button" aria-pressed={measures} onClick={() => stage.current?.take(measures ? { kind: 'none' } : { kind: 'measure' })}>
        {words.measure}
      </button>
      {tool.kind === 'pick' && (
        <button type="button" onClick={() => stage.current?.take({ kind: 'none' })}>
          {words.stopPicking}
        </button>
      )}
    </div>
  );
};

const toolSaid = (tool: Tool, lengths: Lengths, picking: Picking | undefined, words: Words['picture']): string => {
  if (tool.kind === 'none') return '';
  if (tool.kind === 'pick') {
    if (tool.wanted === 'place') return picking?.prompt ?? '';
    return words.pickCorner(tool.first === undefined ? 1 : 2);
  }
  if (tool.from === undefined) return words.measureFirst;
  if (tool.to === undefined) return words.measureSecond;
  const { dx, dy, distance } = measured(tool.from.at, tool.to.at);
  return words.measuredText(lengths.full(dx), lengths.full(dy), lengths.full(distance));
};

/** Beside the pointer, on the side where there is room. */
const Tip = ({
  text,
  hovered,
  frame,
}: {
  readonly text: string;
  readonly hovered: Hovered;
  readonly frame: HTMLElement | null;
}): ReactNode => {
  const { x, y } = hovered.pixel;
  const width = frame?.clientWidth ?? 0;
  const height = frame?.clientHeight ?? 0;
  const across = x > width / 2 ? { right: width - x + 14 } : { left: x + 14 };
  const down = y > height / 2 ? { bottom: height - y + 14 } : { top: y + 18 };
  return (
    <div className="picture-tip" style={{ ...across, ...down }} aria-hidden="true">
      {text}
    </div>
  );
};
