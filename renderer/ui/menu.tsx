import { DropdownMenu } from 'radix-ui';
import { GlyphButton } from './button.tsx';
import { MoreGlyph } from './glyphs.tsx';
import styles from './menu.module.css';

export type MenuItem = { readonly words: string; readonly onSelect: () => void; readonly grave?: boolean };

/** Less frequent things to do, behind one button. Not modal: the modal kind writes a style element, which the security policy forbids. */
export const Menu = ({ name, items }: { name: string; items: readonly MenuItem[] }) => (
  <DropdownMenu.Root modal={false}>
    <DropdownMenu.Trigger asChild><GlyphButton name={name}><MoreGlyph /></GlyphButton></DropdownMenu.Trigger>
    <DropdownMenu.Portal>
      <DropdownMenu.Content className={styles.menu} align="end" sideOffset={4}>
        {items.map(({ words, onSelect, grave = false }) => (
          <DropdownMenu.Item key={words} className={styles.item} data-grave={grave ? '' : undefined} onSelect={onSelect}>{words}</DropdownMenu.Item>
        ))}
      </DropdownMenu.Content>
    </DropdownMenu.Portal>
  </DropdownMenu.Root>
);
