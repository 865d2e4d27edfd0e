// The preview beside the text: drawings, papers and pages.
const JOB = 'garden-wall/job.perp';

const shows = (kind, job = JOB) =>
  async function show(on) {
    await on.only(job);
    await on.show(kind);
    await on.shot(`preview-${kind}`);
  };

export default {
  async previewMarked(on) {
    await on.only(JOB);
    await on.at('width   1010');
    await on.show('front');
    await on.shot('preview-marked');
  },
  previewFront: shows('front', 'enclosure/job.perp'),
  previewPlan: shows('plan'),
  previewTop: shows('top'),
  previewRod: shows('rod'),
  previewQuote: shows('quote'),
  previewInvoice: shows('invoice', 'whole-life/10-invoiced.perp'),
  previewPrice: shows('price'),
  previewMeasure: shows('measure', 'repair/job.perp'),
};
