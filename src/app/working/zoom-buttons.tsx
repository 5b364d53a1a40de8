import { say } from '../../i18n/index.ts';

const CLOSER = 1.4;

export function ZoomButtons({ drawing }: { readonly drawing: { zoomBy(factor: number): void } }) {
  return (
    <>
      <ZoomButton sign="+" word="closer" onZoom={() => drawing.zoomBy(CLOSER)} />
      <ZoomButton sign="−" word="further" onZoom={() => drawing.zoomBy(1 / CLOSER)} />
    </>
  );
}

function ZoomButton(props: {
  readonly sign: string;
  readonly word: 'closer' | 'further';
  readonly onZoom: () => void;
}) {
  const label = say(`app.plant.${props.word}`);
  return (
    <button
      type="button"
      className="button zoom"
      aria-label={label}
      title={label}
      onClick={props.onZoom}
    >
      {props.sign}
    </button>
  );
}
