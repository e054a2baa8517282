package perkilo.schema;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;

/** Headers in German, French, Italian and Spanish, and everyday ones in English, by the header of a template. */
final class OtherLanguages {

    private static final Map<String, String> WORDS = words();

    private OtherLanguages() {}

    /** Other spellings of a header; each implies no unit. */
    static Map<String, String> of(String header) {
        Map<String, String> synonyms = new LinkedHashMap<>();
        String words = WORDS.getOrDefault(header, "");
        for (int from = 0; from < words.length(); ) {
            int end = words.indexOf('|', from);
            int to = end < 0 ? words.length() : end;
            synonyms.put(words.substring(from, to), "");
            from = to + 1;
        }
        return synonyms;
    }

    private static Map<String, String> words() {
        Map<String, String> words = new HashMap<>();
        // settings
        words.put("Setting", "Einstellung|Paramètre|Impostazione|Ajuste|Parametro|Parámetro");
        words.put("Value", "Wert|Valeur|Valore|Valor");
        words.put("Home currency", "Hauswährung|Heimatwährung|Devise de base|Valuta di base|Moneda base");
        words.put("Costing date", "Kalkulationsdatum|Stichtag|Date de calcul|Data di calcolo|Fecha de cálculo");
        words.put("Labour rate", "Stundensatz|Lohnsatz|Taux horaire|Costo orario|Coste por hora");
        words.put("Overhead %", "Gemeinkosten %|Frais généraux %|Spese generali %|Gastos generales %");
        // suppliers and offers
        words.put(
                "Supplier",
                "Who sells it|Lieferant|Lieferfirma|Hersteller/Lieferant|Fournisseur|Fornitore|Proveedor|Bought from"
                        + "|Sold by|Supplied by");
        words.put("Currency", "Währung|Devise|Monnaie|Valuta|Divisa|Moneda|Money");
        words.put(
                "Terms",
                "Lieferbedingung|Lieferbedingungen|Lieferkondition|Conditions de livraison|Condizioni di consegna|Resa"
                        + "|Condiciones de entrega");
        words.put(
                "Minimum order value",
                "Mindestbestellwert|Mindestauftragswert|Mindestbestellwert netto|Minimum de commande|Montant minimum"
                        + "|Franco minimum|Ordine minimo|Importo minimo ordine|Pedido mínimo|Importe mínimo"
                        + "|Order value minimum|Smallest order value");
        words.put(
                "Small-order charge",
                "Mindermengenzuschlag|Kleinmengenzuschlag|Small order charge|Frais de petite commande"
                        + "|Supplemento piccoli ordini|Recargo por pedido pequeño");
        words.put(
                "Freight per order",
                "Fracht je Auftrag|Fracht pro Auftrag|Fracht je Bestellung|Fracht pro Bestellung|Versandkosten je Auftrag"
                        + "|Versandkosten pro Bestellung|Versandkosten je Bestellung|Frachtpauschale|Versandpauschale"
                        + "|Port par commande|Frais de port par commande|Transport par commande|Trasporto per ordine"
                        + "|Spese di trasporto per ordine|Portes por pedido|Transporte por pedido|Flete por pedido"
                        + "|Delivery cost per order|Delivery costs per order|Delivery charge per order"
                        + "|Delivery per order|Delivery fee per order|Transport per order|Postage per order"
                        + "|Freight each order|Freight per shipment|Freight per delivery");
        words.put(
                "Freight per kg",
                "Fracht je kg|Fracht pro kg|Fracht kg|Fracht EUR kg|Versand pro kg|Versand je kg|Transport par kg"
                        + "|Port par kg|Port kg|Trasporto al kg|Trasporto per kg|Trasporto kg|Portes por kg|Flete por kg"
                        + "|Transporte por kg|Freight kg|Freight EUR kg|Freight USD kg|Freight GBP kg|Shipping kg"
                        + "|Shipping EUR kg|Shipping USD kg|Shipping GBP kg|Carriage kg|Delivery per kg"
                        + "|Delivery cost per kg|Transport per kg|Transport kg");
        words.put("Insurance %", "Versicherung %|Transportversicherung %|Assurance %|Assicurazione %|Seguro %");
        words.put(
                "Duty %",
                "Zoll %|Zollsatz|Zollsatz %|Zoll|Droits de douane %|Droits de douane|Douane %|Dazio %|Dazio"
                        + "|Dazi doganali %|Arancel %|Arancel|Aranceles %|Customs %|Import duty|Customs duty|Tariff");
        words.put(
                "Lead time days",
                "Lieferzeit Tage|Lieferzeit|Lieferzeit in Tagen|Lieferfrist|Délai jours|Délai|Délai de livraison"
                        + "|Délai de livraison jours|Tempi di consegna|Tempo di consegna|Giorni di consegna|Consegna giorni"
                        + "|Plazo de entrega|Plazo de entrega días|Plazo días|Days to deliver|Delivery days");
        words.put(
                "Payment terms",
                "Zahlungsbedingungen|Zahlungsbedingung|Zahlungskonditionen|Conditions de paiement"
                        + "|Condizioni di pagamento|Condiciones de pago");
        words.put(
                "Payment terms days",
                "Zahlungsziel Tage|Zahlungsfrist Tage|Délai de paiement jours|Termini di pagamento giorni"
                        + "|Plazo de pago días");
        words.put("Address", "Anschrift|Adresse|Indirizzo|Dirección");
        words.put("Contact", "Ansprechpartner|Kontakt|Interlocuteur|Contatto|Contacto|Persona de contacto");
        words.put(
                "Our customer number",
                "Unsere Kundennummer|Kundennummer|Numéro client|Codice cliente|Número de cliente");
        words.put("Prepaid %", "Anzahlung %|Vorauszahlung %|Acompte %|Acconto %|Anticipo %");
        words.put(
                "Item",
                "Artikel|Artikelbezeichnung|Bezeichnung|Rohstoff|Ware|Désignation|Matière|Matière première|Ingrédient"
                        + "|Articolo|Materia prima|Ingrediente|Descrizione|Artículo|Descripción|Produktname|Goods"
                        + "|What|Description");
        words.put(
                "Pack size",
                "Gebinde|Gebindegröße|Gebindeinhalt|Packungsgröße|Packungsinhalt|Packgröße|Conditionnement"
                        + "|Taille du conditionnement|Contenance|Confezione|Formato|Envase|Tamaño de envase|Container"
                        + "|Bag size|Drum size|Package");
        words.put(
                "Pack unit",
                "Einheit|Gebindeeinheit|Mengeneinheit|ME|Unité|Unité de conditionnement|Unità|Unità di misura|UM|Unidad"
                        + "|Unidad de medida");
        words.put(
                "From quantity",
                "Ab Menge|Menge ab|Staffel|Staffelmenge|Ab|À partir de|Quantité à partir de|Da quantità|Quantità da"
                        + "|A partire da|Desde cantidad|A partir de|From amount|Quantity break|Tier|Tier from");
        words.put(
                "Price",
                "Preis|Einzelpreis|Nettopreis|Listenpreis|Einkaufspreis|Einkaufspreis netto|EK-Preis|EK|Prix"
                        + "|Prix unitaire|Prix net|Prix d'achat|Prix HT|Prezzo|Prezzo unitario|Prezzo netto|Precio"
                        + "|Precio unitario|Precio neto|Buying price|Purchase price|Our price|Quoted price");
        words.put(
                "Price per",
                "Preis pro|Preis je|Preiseinheit|Preis pro Einheit|Preisbasis|Prix par|Unité de prix|Unité du prix"
                        + "|Prezzo per|Unità prezzo|Unità di prezzo|Precio por|Unidad de precio|Price is per|Priced per");
        words.put(
                "Minimum order",
                "Mindestmenge|Mindestbestellmenge|Mindestabnahme|Quantité minimum|Quantité minimale|Minimum de commande qté"
                        + "|Quantità minima|Ordine minimo qtà|Cantidad mínima|Minimum purchase|Smallest order");
        words.put(
                "Order multiple",
                "Bestellvielfaches|Vielfaches|Multiple de commande|Multiplo|Multiplo d'ordine|Múltiplo");
        words.put(
                "Discount %",
                "Discount|Rebate %|Rebate|Disc %|Disc.|Rabatt %|Rabatt|Nachlass %|Nachlass|Remise %|Remise|Rabais %"
                        + "|Rabais|Sconto %|Sconto|Descuento %|Descuento|Dto %");
        words.put(
                "Surcharge %",
                "Price surcharge %|Zuschlag %|Preiszuschlag %|Aufschlag %|Supplément %|Majoration %|Supplemento %"
                        + "|Maggiorazione %|Recargo %");
        words.put(
                "Quoted on",
                "Angebotsdatum|Preis vom|Datum|Gültig ab|Preisdatum|Date de l'offre|Date du devis|Date du prix"
                        + "|Valable à partir du|Valable dès|Data offerta|Data del preventivo|Valido dal|Fecha de oferta"
                        + "|Fecha|Válido desde|As of|Price as of");
        words.put(
                "Valid until",
                "Gültig bis|Preis gültig bis|Valable jusqu'au|Valable jusqu'à|Validité|Valido fino al|Valido fino"
                        + "|Scadenza|Válido hasta|Vence|Good until|Offer valid until|Valid through|Price holds until");
        // materials and formulas
        words.put(
                "Material",
                "Rohstoff|Rohmaterial|Inhaltsstoff|Zutat|Handelsname|Matière première|Matière|Ingrédient|Nom commercial"
                        + "|Materia prima|Ingrediente|Nome commerciale|Nombre comercial");
        words.put("INCI name", "INCI-Bezeichnung|INCI-Name|Nom INCI|Nome INCI|Nombre INCI|Dénomination INCI");
        words.put("Functions", "Funktion|Funktionen|Fonction|Fonctions|Funzione|Funzioni|Función|Funciones");
        words.put("Density g/mL", "Dichte g/mL|Dichte|Densité|Densità|Densidad");
        words.put(
                "Shelf life months", "Haltbarkeit Monate|Haltbarkeit|Durée de conservation|Shelf life mesi|Caducidad");
        words.put("Handling loss %", "Wägeverlust %|Verlust %|Perte %|Perdita %|Pérdida %");
        words.put("Formula", "Rezeptur|Rezept|Formel|Formule|Recette|Ricetta|Fórmula|Receta");
        words.put("Phase", "Fase");
        words.put(
                "% w/w",
                "Gew.-%|Gew-%|Gewichts-%|Gewichtsprozent|Anteil %|Anteil in %|Menge %|% m/m|% massique|% en masse|Taux %"
                        + "|Dose %|Quantité %|% p/p|% peso|% in peso|Quantità %|Percentuale|Porcentaje|% en peso|How much %"
                        + "|Share %");
        words.put("Phase °C", "Temperatur °C|Temperatur|Température|Temperatura");
        // products and plans
        words.put(
                "Product",
                "Produkt|Produktname|Fertigprodukt|Produit|Nom du produit|Prodotto|Nome prodotto|Producto"
                        + "|Which product");
        words.put("Fill", "Füllmenge|Inhalt|Nennfüllmenge|Contenu|Contenance|Contenuto|Contenido|How full");
        words.put("Fill unit", "Einheit|Fülleinheit|Unité|Unità|Unidad");
        words.put("VAT %", "MwSt %|MwSt.|MwSt|USt %|USt|TVA %|TVA|IVA %|IVA");
        words.put("Target retail price", "Verkaufspreis|VK-Preis|UVP|Prix de vente|Prix public|Prezzo al pubblico|PVP");
        words.put(
                "One-off costs",
                "Einmalkosten|Frais uniques|Coûts uniques|Costi una tantum|Costes únicos|Set-up costs");
        words.put("Component", "Packmittel|Verpackung|Bauteil|Emballage|Composant|Imballaggio|Componente|Embalaje");
        words.put(
                "Units per product",
                "Stück je Produkt|Stück pro Produkt|Anzahl|Quantité par produit|Par produit|Pezzi per prodotto"
                        + "|Unidades por producto|How many per product|How many");
        words.put("Loss %", "Ausschuss %|Ausschuss|Schwund %|Rebut %|Scarto %|Merma %");
        words.put(
                "Units",
                "How many|How many units|Stück|Stückzahl|Anzahl|Menge|Einheiten|Losgröße|Quantité|Unités|Nombre d'unités"
                        + "|Pezzi|Quantità|Unità|Unidades|Cantidad|Piezas|Pcs|Amount");
        words.put("Batch kg", "Ansatz kg|Ansatzgröße kg|Charge kg|Lot kg|Lotto kg|Lote kg");
        words.put(
                "Needed by",
                "Bedarf am|Bedarfstermin|Termin|Liefertermin|Benötigt bis|Besoin le|Nécessaire pour le|Échéance"
                        + "|Necessario entro|Entro|Necesario para|Fecha|When|Wanted by|Needed on|Need date|Deadline");
        words.put(
                "Quantity", "Menge|Bestand|Lagerbestand|Quantité|Stock actuel|Quantità|Giacenza|Cantidad|Existencias");
        words.put("Unit", "Einheit|ME|Unité|Unità|UM|Unidad");
        words.put(
                "Expires",
                "Haltbar bis|MHD|Verfallsdatum|Péremption|Date de péremption|Scadenza|Data di scadenza|Caduca|Caducidad");
        words.put(
                "Expected on",
                "Erwartet am|Eintreffen|Wareneingang|Attendu le|Livraison prévue|Atteso il|Arrivo previsto|Esperado el"
                        + "|Llegada prevista");
        // rates
        words.put("From", "Von|De|Da|Von Währung|Devise de départ");
        words.put("To", "Nach|Vers|Nach Währung|Devise d'arrivée");
        words.put(
                "Rate",
                "Kurs|Wechselkurs|Umrechnungskurs|Taux|Cours|Taux de change|Cambio|Tasso di cambio|Tipo de cambio");
        words.put("Date", "Datum|Data|Fecha|Jour");
        words.put("Source", "Quelle|Fonte|Fuente");
        // making
        words.put("Vessel max kg", "Kessel max kg|Kesselgröße kg|Cuve max kg|Caldaia max kg|Reactor max kg");
        words.put("Vessel min kg", "Kessel min kg|Cuve min kg|Reactor min kg");
        words.put(
                "Hours per batch", "Stunden je Ansatz|Stunden pro Ansatz|Heures par lot|Ore per lotto|Horas por lote");
        return words;
    }
}
