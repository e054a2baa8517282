package perkilo.corpus;

import java.util.List;
import java.util.Map;

/** The words that a supplier's list uses, in one of five languages; words of the trade, common practice, no source. */
@SuppressWarnings("ImmutableEnumChecker") // its lists and maps cannot be changed
enum Tongue {
    ENGLISH(
            Map.ofEntries(
                    Map.entry("item", List.of("Product", "Trade name", "Material", "Description")),
                    Map.entry("code", List.of("Item no", "Code", "Article number")),
                    Map.entry("inci", List.of("INCI name", "INCI")),
                    Map.entry("cas", List.of("CAS no", "CAS number")),
                    Map.entry("pack", List.of("Pack", "Packaging", "Pack size", "Container")),
                    Map.entry("unit", List.of("Unit", "UoM")),
                    Map.entry("price", List.of("Price", "Unit price", "Net price")),
                    Map.entry("per", List.of("Price per", "Per", "Price unit")),
                    Map.entry("currency", List.of("Currency", "Curr")),
                    Map.entry("from", List.of("From quantity", "Quantity from", "From")),
                    Map.entry("quantity", List.of("Qty", "Quantity")),
                    Map.entry("until", List.of("Valid until", "Valid to")),
                    Map.entry("quoted", List.of("Date", "Quoted on", "Price date")),
                    Map.entry("remark", List.of("Remarks", "Origin", "Storage"))),
            List.of("per ", "/"),
            List.of("drum", "can", "bag", "pail"),
            List.of("drums", "packs"),
            "from ",
            List.of("valid until %s", "Prices valid until %s", "valid to %s"),
            List.of("As of %s", "Date: %s", "Price list %s"),
            List.of("%s days from the date of this list", "Offer valid for %s days"),
            List.of("All prices in %s per %s", "Prices in %s/%s"),
            List.of("Price list", "Your quotation", "Offer"),
            List.of("Emollients", "Actives", "Waxes and butters"),
            List.of("Supplier", "Vendor"),
            List.of(
                    "January",
                    "February",
                    "March",
                    "April",
                    "May",
                    "June",
                    "July",
                    "August",
                    "September",
                    "October",
                    "November",
                    "December"),
            '.',
            ','),
    GERMAN(
            Map.ofEntries(
                    Map.entry("item", List.of("Bezeichnung", "Artikel", "Rohstoff", "Produkt")),
                    Map.entry("code", List.of("Art.-Nr.", "Artikelnummer")),
                    Map.entry("inci", List.of("INCI", "INCI-Bezeichnung")),
                    Map.entry("cas", List.of("CAS-Nr.", "CAS-Nummer")),
                    Map.entry("pack", List.of("Gebinde", "Gebindegröße", "Verpackung", "VPE")),
                    Map.entry("unit", List.of("Einheit", "ME")),
                    Map.entry("price", List.of("Preis", "Nettopreis", "Listenpreis")),
                    Map.entry("per", List.of("Preis je", "Preiseinheit", "Preis pro")),
                    Map.entry("currency", List.of("Währung")),
                    Map.entry("from", List.of("ab Menge", "Staffel")),
                    Map.entry("quantity", List.of("Menge")),
                    Map.entry("until", List.of("Gültig bis")),
                    Map.entry("quoted", List.of("Datum", "Stand")),
                    Map.entry("remark", List.of("Bemerkung", "Herkunft", "Lagerung"))),
            List.of("je ", "pro ", "/"),
            List.of("Fass", "Kanister", "Sack", "Eimer"),
            List.of("Gebinde", "Fässer"),
            "ab ",
            List.of("gültig bis %s", "Preise gültig bis %s", "Gültig bis zum %s"),
            List.of("Stand: %s", "Stand %s", "Datum: %s"),
            List.of("Bindefrist %s Tage", "%s Tage gültig"),
            List.of("Alle Preise in %s je %s", "Preise in %s/%s"),
            List.of("Preisliste", "Angebot"),
            List.of("Emollienzien", "Wirkstoffe", "Wachse und Butter"),
            List.of("Lieferant", "Hersteller"),
            List.of(
                    "Januar",
                    "Februar",
                    "März",
                    "April",
                    "Mai",
                    "Juni",
                    "Juli",
                    "August",
                    "September",
                    "Oktober",
                    "November",
                    "Dezember"),
            ',',
            '.'),
    FRENCH(
            Map.ofEntries(
                    Map.entry("item", List.of("Désignation", "Produit", "Libellé", "Matière première")),
                    Map.entry("code", List.of("Référence", "Réf.", "Code article")),
                    Map.entry("inci", List.of("INCI", "Nom INCI")),
                    Map.entry("cas", List.of("N° CAS", "CAS")),
                    Map.entry("pack", List.of("Conditionnement", "Emballage")),
                    Map.entry("unit", List.of("Unité")),
                    Map.entry("price", List.of("Prix", "Prix unitaire HT", "Prix net", "Tarif HT")),
                    Map.entry("per", List.of("Prix par", "Unité de prix")),
                    Map.entry("currency", List.of("Devise")),
                    Map.entry("from", List.of("À partir de", "Quantité à partir de")),
                    Map.entry("quantity", List.of("Quantité", "Qté")),
                    Map.entry("until", List.of("Valable jusqu'au", "Date de fin de validité")),
                    Map.entry("quoted", List.of("Date", "Date du tarif")),
                    Map.entry("remark", List.of("Remarques", "Origine", "Stockage"))),
            List.of("par ", "/", "le "),
            List.of("fût", "bidon", "sac", "seau"),
            List.of("fûts", "conditionnements"),
            "à partir de ",
            List.of("valable jusqu'au %s", "Prix valables jusqu'au %s", "Tarif valable jusqu'au %s"),
            List.of("Tarif du %s", "Date : %s", "Le %s"),
            List.of("Validité de l'offre : %s jours", "Offre valable %s jours"),
            List.of("Tous les prix en %s par %s", "Prix en %s/%s"),
            List.of("Tarif", "Votre offre", "Liste de prix"),
            List.of("Émollients", "Actifs", "Cires et beurres"),
            List.of("Fournisseur"),
            List.of(
                    "janvier",
                    "février",
                    "mars",
                    "avril",
                    "mai",
                    "juin",
                    "juillet",
                    "août",
                    "septembre",
                    "octobre",
                    "novembre",
                    "décembre"),
            ',',
            '\u00a0'),
    ITALIAN(
            Map.ofEntries(
                    Map.entry("item", List.of("Descrizione", "Prodotto", "Materia prima", "Articolo")),
                    Map.entry("code", List.of("Codice", "Cod. articolo")),
                    Map.entry("inci", List.of("INCI", "Nome INCI")),
                    Map.entry("cas", List.of("N. CAS", "CAS")),
                    Map.entry("pack", List.of("Confezione", "Imballo", "Formato")),
                    Map.entry("unit", List.of("Unità", "U.M.")),
                    Map.entry("price", List.of("Prezzo", "Prezzo unitario", "Prezzo netto")),
                    Map.entry("per", List.of("Prezzo per", "Unità di prezzo")),
                    Map.entry("currency", List.of("Valuta", "Divisa")),
                    Map.entry("from", List.of("A partire da", "Da quantità")),
                    Map.entry("quantity", List.of("Quantità", "Q.tà")),
                    Map.entry("until", List.of("Valido fino al", "Scadenza")),
                    Map.entry("quoted", List.of("Data", "Data offerta")),
                    Map.entry("remark", List.of("Note", "Origine"))),
            List.of("per ", "/", "al "),
            List.of("fusto", "tanica", "sacco", "secchio"),
            List.of("fusti", "confezioni"),
            "da ",
            List.of("valido fino al %s", "Prezzi validi fino al %s"),
            List.of("Listino del %s", "Data: %s"),
            List.of("Offerta valida %s giorni", "Validità offerta: %s giorni"),
            List.of("Tutti i prezzi in %s per %s", "Prezzi in %s/%s"),
            List.of("Listino prezzi", "Offerta"),
            List.of("Emollienti", "Attivi", "Cere e burri"),
            List.of("Fornitore"),
            List.of(
                    "gennaio",
                    "febbraio",
                    "marzo",
                    "aprile",
                    "maggio",
                    "giugno",
                    "luglio",
                    "agosto",
                    "settembre",
                    "ottobre",
                    "novembre",
                    "dicembre"),
            ',',
            '.'),
    SPANISH(
            Map.ofEntries(
                    Map.entry("item", List.of("Descripción", "Producto", "Materia prima", "Artículo")),
                    Map.entry("code", List.of("Código", "Referencia", "Ref.")),
                    Map.entry("inci", List.of("INCI", "Nombre INCI")),
                    Map.entry("cas", List.of("N.º CAS", "CAS")),
                    Map.entry("pack", List.of("Envase", "Formato", "Presentación")),
                    Map.entry("unit", List.of("Unidad")),
                    Map.entry("price", List.of("Precio", "Precio unitario", "Precio neto")),
                    Map.entry("per", List.of("Precio por", "Unidad de precio")),
                    Map.entry("currency", List.of("Moneda", "Divisa")),
                    Map.entry("from", List.of("A partir de", "Desde cantidad")),
                    Map.entry("quantity", List.of("Cantidad")),
                    Map.entry("until", List.of("Válido hasta", "Vigente hasta")),
                    Map.entry("quoted", List.of("Fecha", "Fecha de oferta")),
                    Map.entry("remark", List.of("Observaciones", "Origen"))),
            List.of("por ", "/", "el "),
            List.of("bidón", "garrafa", "saco", "cubo"),
            List.of("bidones", "envases"),
            "desde ",
            List.of("válido hasta el %s", "Precios válidos hasta el %s"),
            List.of("Tarifa del %s", "Fecha: %s"),
            List.of("Oferta válida %s días", "Validez de la oferta: %s días"),
            List.of("Todos los precios en %s por %s", "Precios en %s/%s"),
            List.of("Lista de precios", "Oferta"),
            List.of("Emolientes", "Activos", "Ceras y mantecas"),
            List.of("Proveedor"),
            List.of(
                    "enero",
                    "febrero",
                    "marzo",
                    "abril",
                    "mayo",
                    "junio",
                    "julio",
                    "agosto",
                    "septiembre",
                    "octubre",
                    "noviembre",
                    "diciembre"),
            ',',
            '.');

    private final Map<String, List<String>> heads;
    final List<String> per;
    final List<String> containers;
    final List<String> packs;
    final String from;
    final List<String> until;
    final List<String> asOf;
    final List<String> days;
    final List<String> pricesIn;
    final List<String> titles;
    final List<String> sections;
    final List<String> suppliers;
    final List<String> months;
    final char decimal;
    final char thousands;

    Tongue(
            Map<String, List<String>> heads,
            List<String> per,
            List<String> containers,
            List<String> packs,
            String from,
            List<String> until,
            List<String> asOf,
            List<String> days,
            List<String> pricesIn,
            List<String> titles,
            List<String> sections,
            List<String> suppliers,
            List<String> months,
            char decimal,
            char thousands) {
        this.heads = heads;
        this.per = per;
        this.containers = containers;
        this.packs = packs;
        this.from = from;
        this.until = until;
        this.asOf = asOf;
        this.days = days;
        this.pricesIn = pricesIn;
        this.titles = titles;
        this.sections = sections;
        this.suppliers = suppliers;
        this.months = months;
        this.decimal = decimal;
        this.thousands = thousands;
    }

    /** The words for a column. */
    List<String> heads(String column) {
        return heads.getOrDefault(column, List.of(column));
    }
}
