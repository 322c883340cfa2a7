/** What a drawing takes from the page's style sheets. */
const PROPERTIES = [
  ...['fill', 'fill-opacity', 'stroke', 'stroke-width', 'stroke-dasharray', 'stroke-linecap'],
  ...['stroke-linejoin', 'opacity', 'font-family', 'font-size', 'font-style', 'text-anchor'],
] as const;

/** A colour as every reader of SVG knows it; a browser may give a mixed one in words of its own. */
function asRgb(colour: string): string {
  if (!/^(color|oklab|oklch|lab|lch)\(/.test(colour)) return colour;
  const context = document.createElement('canvas').getContext('2d');
  if (!context) return colour;
  context.fillStyle = colour;
  context.fillRect(0, 0, 1, 1);
  const [r, g, b] = context.getImageData(0, 0, 1, 1).data;
  return `rgb(${r}, ${g}, ${b})`;
}

/** A drawing that stands on the page as a text of its own, which looks the same without the page. */
export function paintedSvg(drawing: SVGSVGElement): string {
  const copy = drawing.cloneNode(true) as SVGSVGElement;
  const copies = [copy, ...copy.querySelectorAll('*')];
  for (const [i, original] of [drawing, ...drawing.querySelectorAll('*')].entries()) {
    const styles = getComputedStyle(original);
    for (const name of PROPERTIES)
      copies[i]!.setAttribute(name, asRgb(styles.getPropertyValue(name)));
    copies[i]!.removeAttribute('class');
  }
  copy.setAttribute('xmlns', 'http://www.w3.org/2000/svg');
  return new XMLSerializer().serializeToString(copy);
}
