#include "ui/paper/Pdf.h"

#include <QBuffer>
#include <QPageLayout>
#include <QPdfWriter>

namespace matwright {
namespace {

constexpr qreal kPointsPerMillimetre = 72 / 25.4;

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

QSizeF unitsOf(QSizeF millimetres) { return millimetres * kPointsPerMillimetre * kUnitsPerPoint; }

QByteArray pdfOf(const PdfFacts& facts, const std::function<void(QPainter&, const QRectF& sheet, int page)>& paint) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  QPdfWriter writer(&buffer);
  writer.setPageSize(QPageSize(facts.paper, QPageSize::Millimeter));
  writer.setPageMargins(QMarginsF(), QPageLayout::Millimeter);
  writer.setResolution(static_cast<int>(72 * kUnitsPerPoint));
  writer.setTitle(facts.title);
  writer.setCreator(QStringLiteral("Matwright"));
  writer.setDocumentXmpMetadata(metadataOf(facts.title, facts.subject));
  QPainter painter(&writer);
  for (int page = 0; page < facts.pages; ++page) {
    if (page > 0)
      writer.newPage();
    paint(painter, QRectF(QPointF(), unitsOf(facts.paper)), page);
  }
  painter.end();
  return bytes;
}

} // namespace matwright
