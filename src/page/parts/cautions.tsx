// What has to be known beside the figures, as the engine says it.
export function Cautions({texts}: {texts: string[]}) {
    return (
        <section class="cautions" aria-label="What to know">
            {texts.map((text, i) => (
                <p key={i}>{text}</p>
            ))}
        </section>
    );
}
