import { DropdownMenu } from 'radix-ui';
import { Button } from './button.tsx';
import { UnfoldGlyph } from './glyphs.tsx';
import styles from './menu.module.css';

export type MenuItem = { readonly words: string; readonly onSelect: () => void; readonly grave?: boolean };

type Props = {
  readonly words: string;
  readonly name: string;
  readonly items: readonly MenuItem[];
  readonly look?: 'plain' | 'quiet';
  readonly className?: string | undefined;
  readonly disabled?: boolean;
};

/** Less frequent things to do, behind one button. Not modal: the modal kind writes a style element, which the security policy forbids. */
export const Menu = ({ words, name, items, look = 'quiet', className, disabled = false }: Props) => (
  <DropdownMenu.Root modal={false}>
    <DropdownMenu.Trigger asChild>
      <Button look={look} aria-label={name} disabled={disabled} className={className}>{words}<UnfoldGlyph /></Button>
    </DropdownMenu.Trigger>
    <DropdownMenu.Portal>
      <DropdownMenu.Content className={styles.menu} align="end" sideOffset={4}>
        {items.map(({ words: item, onSelect, grave = false }) => (
          <DropdownMenu.Item key={item} className={styles.item} data-grave={grave ? '' : undefined} onSelect={onSelect}>{item}</DropdownMenu.Item>
        ))}
      </DropdownMenu.Content>
    </DropdownMenu.Portal>
  </DropdownMenu.Root>
);
