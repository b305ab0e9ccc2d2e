#include "ui/card/CardPdf.h"

#include "ui/card/CardPainter.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QPageLayout>
#include <QPdfWriter>

namespace matwright {
namespace {

// QPdfWriter sets title and creator alone; the rest goes into XMP (ISO 16684-1).
QByteArray metadataOf(const QString& title, const QString& subject) {
  const QString packet = QStringLiteral(R"(<?xpacket begin="" id="W5M0MpCehiHzreSzNTczkc9d"?>
<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
<rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:xmp="http://ns.adobe.com/xap/1.0/">
<dc:title><rdf:Alt><rdf:li xml:lang="x-default">%1</rdf:li></rdf:Alt></dc:title>
<dc:description><rdf:Alt><rdf:li xml:lang="x-default">%2</rdf:li></rdf:Alt></dc:description>
<dc:format>application/pdf</dc:format><xmp:CreatorTool>Matwright</xmp:CreatorTool>
</rdf:Description></rdf:RDF></x:xmpmeta>
<?xpacket end="w"?>)");
  return packet.arg(title.toHtmlEscaped(), subject.toHtmlEscaped()).toUtf8();
}

} // namespace

QByteArray cardPdf(const Card& card, QSizeF paperMillimetres, int pages) {
  const CardLayout layout = layOut(card, paperMillimetres, pages);
  const CardWords words = wordsOf(card, layout.density);
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  QPdfWriter writer(&buffer);
  writer.setPageSize(QPageSize(paperMillimetres, QPageSize::Millimeter));
  writer.setPageMargins(QMarginsF(), QPageLayout::Millimeter);
  writer.setResolution(720);
  writer.setTitle(words.title);
  writer.setCreator(QStringLiteral("Matwright"));
  writer.setDocumentXmpMetadata(metadataOf(words.title, words.subtitle));
  QPainter painter(&writer);
  for (std::size_t page = 0; page < layout.pages.size(); ++page) {
    if (page > 0)
      writer.newPage();
    paintCard(painter, QRectF(QPointF(), layout.paper), card, layout, page);
  }
  painter.end();
  return bytes;
}

} // namespace matwright
