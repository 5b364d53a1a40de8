import './item-menu.css';

export interface MenuLine {
  readonly label: string;
  readonly act: () => void;
}

/** Buttons beside an item that is looked at closely: what a hand can do there. */
export interface ItemMenu {
  show(name: string, lines: readonly MenuLine[]): void;
  destroy(): void;
}

export function createItemMenu(host: HTMLElement): ItemMenu {
  const menu = document.createElement('div');
  menu.className = 'item-menu';
  menu.setAttribute('role', 'group');
  menu.hidden = true;
  host.append(menu);
  return {
    show(name, lines) {
      menu.setAttribute('aria-label', name);
      menu.hidden = lines.length === 0;
      menu.replaceChildren(
        ...lines.map(({ label, act }) => {
          const button = document.createElement('button');
          button.type = 'button';
          button.className = 'button';
          button.textContent = label;
          button.addEventListener('click', act);
          return button;
        }),
      );
    },
    destroy: () => menu.remove(),
  };
}
