package turnalike.workbook;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Workbooks written by hand, part by part, as no library of ours would write them. */
public final class Workbooks {
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ZipOutputStream zip = new ZipOutputStream(out);

    public static Workbooks empty() {
        return new Workbooks();
    }

    public Workbooks part(String name, byte[] content) {
        try {
            zip.putNextEntry(new ZipEntry(name));
            zip.write(content);
            zip.closeEntry();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return this;
    }

    public Workbooks part(String name, String text) {
        return part(name, text.getBytes(StandardCharsets.UTF_8));
    }

    public byte[] bytes() {
        try {
            zip.close();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return out.toByteArray();
    }

    /** One sheet called Weighed of these rows in the sheet's own XML; style 1 is a date, 2 a number of one decimal, 3 a time of day. */
    public static byte[] of(String rows) {
        return around(rows).bytes();
    }

    public static Workbooks around(String rows) {
        String head = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";
        String main = "xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"";
        String office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
        String pack = "http://schemas.openxmlformats.org/package/2006/";
        String sheet = "application/vnd.openxmlformats-officedocument.spreadsheetml.";
        return empty().part(
                        "[Content_Types].xml",
                        head + "<Types xmlns=\"" + pack + "content-types\">"
                                + "<Default Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/>"
                                + "<Override PartName=\"/xl/workbook.xml\" ContentType=\"" + sheet
                                + "sheet.main+xml\"/>"
                                + "<Override PartName=\"/xl/styles.xml\" ContentType=\"" + sheet + "styles+xml\"/>"
                                + "<Override PartName=\"/xl/worksheets/sheet1.xml\" ContentType=\"" + sheet
                                + "worksheet+xml\"/></Types>")
                .part(
                        "_rels/.rels",
                        head + "<Relationships xmlns=\"" + pack + "relationships\"><Relationship Id=\"rId1\" Type=\""
                                + office + "/officeDocument\" Target=\"xl/workbook.xml\"/></Relationships>")
                .part(
                        "xl/_rels/workbook.xml.rels",
                        head + "<Relationships xmlns=\"" + pack + "relationships\"><Relationship Id=\"rId1\" Type=\""
                                + office
                                + "/worksheet\" Target=\"worksheets/sheet1.xml\"/><Relationship Id=\"rId2\" Type=\""
                                + office
                                + "/styles\" Target=\"styles.xml\"/></Relationships>")
                .part(
                        "xl/workbook.xml",
                        head + "<workbook " + main + " xmlns:r=\"" + office
                                + "\"><sheets><sheet name=\"Weighed\" sheetId=\"1\" r:id=\"rId1\"/></sheets></workbook>")
                .part(
                        "xl/styles.xml",
                        head + "<styleSheet " + main
                                + "><numFmts count=\"2\"><numFmt numFmtId=\"170\" formatCode=\"0.0\"/>"
                                + "<numFmt numFmtId=\"171\" formatCode=\"hh:mm\"/></numFmts>"
                                + "<fonts count=\"1\"><font/></fonts><fills count=\"1\"><fill/></fills>"
                                + "<borders count=\"1\"><border/></borders><cellStyleXfs count=\"1\"><xf/></cellStyleXfs>"
                                + "<cellXfs count=\"4\"><xf numFmtId=\"0\"/><xf numFmtId=\"14\" applyNumberFormat=\"1\"/>"
                                + "<xf numFmtId=\"170\" applyNumberFormat=\"1\"/><xf numFmtId=\"171\" applyNumberFormat=\"1\"/></cellXfs>"
                                + "</styleSheet>")
                .part(
                        "xl/worksheets/sheet1.xml",
                        head + "<worksheet " + main + "><sheetData>" + rows + "</sheetData></worksheet>");
    }
}
