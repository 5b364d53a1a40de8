import { say } from '../../i18n/index.ts';
import { SureButton } from './sure-button.tsx';

interface Props {
  readonly label?: string;
  readonly name?: string;
  readonly ask: string;
  readonly disabled?: boolean;
  readonly onSure: () => void;
}

export function EraseButton({ label = say('practise.erase'), ...others }: Props) {
  return (
    <SureButton
      {...others}
      label={label}
      sure={say('practise.erase')}
      keep={say('practise.keep')}
    />
  );
}
