/** Finished markup of `present`, which makes every text of a case inert before it comes here. */
export function RawHtml({ html, className, as: As = 'span' }: { html: string; className?: string; as?: 'span' | 'div' | 'p' }) {
  // biome-ignore lint/security/noDangerouslySetInnerHtml: only markup made by present/markup, where every text is escaped
  return <As className={className} dangerouslySetInnerHTML={{ __html: html }} />;
}
