// A dialog of the browser's own: keeps the focus, closes with Escape.
import type {ComponentChildren} from 'preact';
import {useEffect, useRef} from 'preact/hooks';

import {say} from '../language';

import './dialog.css';

export function Dialog({
    title,
    kind = '',
    done,
    children,
}: {
    title: string;
    kind?: '' | 'from-below'; ///< at the foot of the screen, where a thumb is
    done: () => void;
    children: ComponentChildren;
}) {
    const dialog = useRef<HTMLDialogElement>(null);
    useEffect(() => {
        const element = dialog.current!;
        if (!element.open) element.showModal();
        return () => element.close();
    }, []);
    return (
        <dialog
            ref={dialog}
            class={`dialog ${kind}`}
            onClose={done}
            aria-label={title}
            onClick={(event) => {
                if (event.target === dialog.current) done();
            }}
        >
            <div class="dialog-inside">
                <div class="dialog-head">
                    <h2>{title}</h2>
                    <button class="step" onClick={done}>
                        {say.common.close}
                    </button>
                </div>
                {children}
            </div>
        </dialog>
    );
}
